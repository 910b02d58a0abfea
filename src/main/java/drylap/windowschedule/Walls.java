package drylap.windowschedule;

import drylap.kernel.SiteId;
import drylap.sites.Compass;
import drylap.sites.Facade;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which facade of a site an elevation of the schedule is: the one of its name, or of the same point of the compass. */
public final class Walls {
    private static final Set<String> PASSED_OVER = Set.of("elevation", "elev", "facade", "wall", "face", "side", "the");
    private static final Pattern FACES = Pattern.compile("\\bfaces (\\d{1,3}(?:\\.\\d)?)\u00b0");
    /** How far a facade's azimuth, which people say in whole degrees or by the compass, may lie off the model's. */
    private static final double NEAR_DEG = 5;

    private static final double FULL_TURN = 360;

    private final List<Facade> facades;

    public Walls(List<Facade> all, SiteId site) {
        facades = all.stream().filter(one -> one.id().site().equals(site)).toList();
    }

    /** The facade whose name says the same, or the only one that faces as is said; none where none does, or several do. */
    public Optional<Facade> named(String elevation) {
        List<Facade> exact = facades.stream()
                .filter(one -> one.id().facade().equals(elevation.strip()))
                .toList();
        List<Facade> same = facades.stream()
                .filter(one -> plain(one.id().facade()).equals(plain(elevation)))
                .toList();
        if (exact.size() == 1) return exact.stream().findFirst();
        return same.size() == 1 ? same.stream().findFirst() : facing(elevation);
    }

    /** As a person chose for this elevation, or else by name. */
    Optional<Facade> of(String elevation, Map<String, String> chosen) {
        String name = chosen.get(elevation);
        if (name == null) return named(elevation);
        return facades.stream().filter(one -> one.id().facade().equals(name)).findFirst();
    }

    public List<String> names() {
        return facades.stream().map(one -> one.id().facade()).toList();
    }

    /** The only facade near the azimuth of words such as "faces 172.5°". */
    private Optional<Facade> facing(String elevation) {
        Matcher said = FACES.matcher(elevation);
        if (!said.find()) return Optional.empty();
        double azimuth = Double.parseDouble(said.group(1));
        List<Facade> near = facades.stream()
                .filter(one -> Math.abs(Math.IEEEremainder(one.azimuthDeg() - azimuth, FULL_TURN)) <= NEAR_DEG)
                .toList();
        return near.size() == 1 ? near.stream().findFirst() : Optional.empty();
    }

    private static String plain(String name) {
        return Arrays.stream(TypedText.words(name).split(" "))
                .filter(word -> !PASSED_OVER.contains(word))
                .map(word -> Compass.called(word).map(Walls::letters).orElse(word))
                .collect(Collectors.joining(" "));
    }

    private static String letters(Compass point) {
        return point.letters().toLowerCase(Locale.ROOT);
    }
}
