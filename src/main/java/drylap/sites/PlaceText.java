package drylap.sites;

import drylap.kernel.GeoPoint;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a place as maps write it: latitude, then longitude, in degrees, or in degrees, minutes and seconds. */
public final class PlaceText {
    public static final String ACCEPTED =
            "latitude, then longitude, such as 47.6062, -122.3321 or 47°36'22\"N 122°19'56\"W";

    private static final String NUMBER = "[-+\u2212]?\\d{1,3}(?:[.]\\d+)?";
    private static final String ANGLE =
            "(%1$s)\\s*(?:[°º]\\s*(?:(\\d{1,2}(?:[.]\\d+)?)\\s*['’′]\\s*(?:(\\d{1,2}(?:[.]\\d+)?)\\s*[\"”″]\\s*)?)?)?\\s*(%%s)?"
                    .formatted(NUMBER);
    private static final Pattern PLACE = Pattern.compile(
            ANGLE.formatted("[NS]") + "\\s*[,;\\s]\\s*" + ANGLE.formatted("[EWO]"), Pattern.CASE_INSENSITIVE);

    private PlaceText() {}

    /** Empty where it is no place; {@link #ACCEPTED} says what would be. */
    public static Optional<GeoPoint> read(String text) {
        Matcher found = PLACE.matcher(text.strip().replaceAll("[()]", ""));
        if (!found.matches()) return Optional.empty();
        double latitude = angle(found, 1);
        double longitude = angle(found, 5);
        return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180
                ? Optional.of(new GeoPoint(latitude, longitude))
                : Optional.empty();
    }

    /** Degrees, minutes, seconds and the letter of the side stand in four groups from {@code first} on. */
    private static double angle(Matcher found, int first) {
        String degrees = found.group(first).replace('\u2212', '-');
        double size = Math.abs(Double.parseDouble(degrees))
                + part(found.group(first + 1)) / 60
                + part(found.group(first + 2)) / 3600;
        String side = found.group(first + 3);
        boolean other = side != null && "SW".contains(side.toUpperCase(Locale.ROOT));
        return degrees.startsWith("-") ^ other ? -size : size;
    }

    private static double part(@org.jspecify.annotations.Nullable String number) {
        return number == null ? 0 : Double.parseDouble(number);
    }

    /** As it is read again, to a decimetre or so. */
    public static String of(GeoPoint place) {
        return String.format(Locale.ROOT, "%.6f, %.6f", place.latitude(), place.longitude())
                .replaceAll("(\\.\\d*?)0+(?=,|$)", "$1")
                .replaceAll("\\.(?=,|$)", "");
    }
}
