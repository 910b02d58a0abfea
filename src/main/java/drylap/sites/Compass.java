package drylap.sites;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

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

    private static final Map<String, Compass> BY_NAME = byName();

    private final String words;
    private final String letters;
    private final String spanish;
    private final int azimuthDeg;

    /** @param spanish its letters where the west is O */
    Compass(String words, String letters, String spanish, int azimuthDeg) {
        this.words = words;
        this.letters = letters;
        this.spanish = spanish;
        this.azimuthDeg = azimuthDeg;
    }

    public String words() {
        return words;
    }

    /** Such as "NE". */
    public String letters() {
        return letters;
    }

    public int azimuthDeg() {
        return azimuthDeg;
    }

    /** The direction that has this name in any of the house's languages, such as "north-east" or "noreste"; its letters are none. */
    public static Optional<Compass> called(String name) {
        return Optional.ofNullable(BY_NAME.get(plain(name)));
    }

    /** The azimuth that somebody wrote in any of the house's languages, in degrees; empty where it is none. */
    public static Optional<Double> azimuth(String text) {
        String said = plain(text);
        Optional<Double> point = Arrays.stream(values())
                .filter(one -> said.equals(one.letters) || said.equals(one.spanish))
                .findFirst()
                .or(() -> called(text))
                .map(one -> (double) one.azimuthDeg);
        if (point.isPresent() || !text.strip().matches("\\d{1,3}([.]\\d{1,3})?\\s*°?")) return point;
        return Optional.of(Double.valueOf(said)).filter(degrees -> degrees <= 360);
    }

    private static Map<String, Compass> byName() {
        Map<String, Compass> names = new HashMap<>();
        for (var language : Language.values()) {
            var say = new Speech(Reading.USUAL.in(language));
            for (var one : values()) names.put(plain(say.it(one.words)), one);
        }
        return Map.copyOf(names);
    }

    private static String plain(String text) {
        return text.strip().replaceAll("[\\s°-]", "").toUpperCase(Locale.ROOT);
    }
}
