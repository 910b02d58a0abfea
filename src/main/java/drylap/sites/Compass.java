package drylap.sites;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The eight directions in which a wall is said to face, with its azimuth in degrees clockwise from true north. */
public enum Compass {
    NORTH("North", "N", "N", 0),
    NORTHEAST("Northeast", "NE", "NE", 45),
    EAST("East", "E", "E", 90),
    SOUTHEAST("Southeast", "SE", "SE", 135),
    SOUTH("South", "S", "S", 180),
    SOUTHWEST("Southwest", "SW", "SO", 225),
    WEST("West", "W", "O", 270),
    NORTHWEST("Northwest", "NW", "NO", 315);

    public static final String ACCEPTED =
            "a direction such as N or southwest, or degrees from 0 to 360, clockwise from north";

    private final String words;
    private final Set<String> letters;
    private final int azimuthDeg;

    /** @param spanish its letters where the west is O */
    Compass(String words, String letters, String spanish, int azimuthDeg) {
        this.words = words;
        this.letters = Stream.of(letters, spanish).collect(Collectors.toUnmodifiableSet());
        this.azimuthDeg = azimuthDeg;
    }

    public String words() {
        return words;
    }

    public int azimuthDeg() {
        return azimuthDeg;
    }

    /** The azimuth that somebody wrote in any of the house's languages, in degrees; empty where it is none. */
    public static Optional<Double> azimuth(String text) {
        String said = plain(text);
        Optional<Double> point = Arrays.stream(values())
                .filter(one -> one.letters.contains(said) || one.isCalled(said))
                .map(one -> (double) one.azimuthDeg)
                .findFirst();
        if (point.isPresent() || !text.strip().matches("\\d{1,3}([.]\\d{1,3})?\\s*°?")) return point;
        return Optional.of(Double.valueOf(said)).filter(degrees -> degrees <= 360);
    }

    private boolean isCalled(String said) {
        return Arrays.stream(Language.values())
                .map(language -> new Speech(Reading.USUAL.in(language)).it(words))
                .anyMatch(called -> said.equals(plain(called)));
    }

    private static String plain(String text) {
        return text.strip().replaceAll("[\\s°-]", "").toUpperCase(Locale.ROOT);
    }
}
