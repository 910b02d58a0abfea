package drylap.forecasts.formats;

import java.util.Optional;
import java.util.regex.Pattern;

/** The US service's answer to where a place lies in its grids: an office and two numbers (from memory and its users' code). */
public final class GridCell {
    private static final Pattern SHAPE = Pattern.compile("[A-Z]{3}/\\d{1,4},\\d{1,4}");

    private GridCell() {}

    /** Such as {@code SEW/125,68}; nothing where the answer does not say. */
    public static Optional<String> read(byte[] bytes) {
        Findings findings = new Findings();
        Json root = Json.read(bytes, findings);
        Json properties = root == null ? null : root.object("properties");
        if (properties == null) return Optional.empty();
        String office = properties.text("gridId");
        Double x = properties.number("gridX");
        Double y = properties.number("gridY");
        if (office == null || x == null || y == null) return Optional.empty();
        return Optional.of("%s/%d,%d".formatted(office, x.longValue(), y.longValue()))
                .filter(GridCell::isOne);
    }

    /** Whether a text names a cell. */
    public static boolean isOne(String text) {
        return SHAPE.matcher(text).matches();
    }
}
