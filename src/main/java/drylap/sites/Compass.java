package drylap.sites;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The eight directions in which a wall is said to face, with its azimuth in degrees clockwise from true north. */
public enum Compass {
    NORTH("North", "N", 0),
    NORTHEAST("Northeast", "NE", 45),
    EAST("East", "E", 90),
    SOUTHEAST("Southeast", "SE", 135),
    SOUTH("South", "S", 180),
    SOUTHWEST("Southwest", "SW", 225),
    WEST("West", "W", 270),
    NORTHWEST("Northwest", "NW", 315);

    public static final String ACCEPTED =
            "a direction such as N or southwest, or degrees from 0 to 360, clockwise from north";

    private final String words;
    private final String letters;
    private final int azimuthDeg;

    Compass(String words, String letters, int azimuthDeg) {
        this.words = words;
        this.letters = letters;
        this.azimuthDeg = azimuthDeg;
    }

    public String words() {
        return words;
    }

    public int azimuthDeg() {
        return azimuthDeg;
    }

    /** The azimuth that somebody wrote, in degrees; empty where it is none. */
    public static Optional<Double> azimuth(String text) {
        String said = text.strip().replaceAll("[\\s°-]", "").toUpperCase(Locale.ROOT);
        Optional<Double> point = Arrays.stream(values())
                .filter(one -> said.equals(one.letters) || said.equals(one.name()))
                .map(one -> (double) one.azimuthDeg)
                .findFirst();
        if (point.isPresent() || !text.strip().matches("\\d{1,3}([.]\\d{1,3})?\\s*°?")) return point;
        return Optional.of(Double.valueOf(said)).filter(degrees -> degrees <= 360);
    }
}
