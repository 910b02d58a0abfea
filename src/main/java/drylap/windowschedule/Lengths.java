package drylap.windowschedule;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Lengths as drawings write them: feet and inches with fractions, decimal inches, millimetres, centimetres, metres, in English or Spanish. A unit in
 * the cell goes before the column's; without either, a number is no length.
 */
public final class Lengths {
    /** What would be accepted, for messages. */
    public static final String ACCEPTED = "a length such as 3'-0 1/2\", 36 1/2\", 42.5 in, 1067 mm or 1.067 m";

    private static final String NUMBER = "\\d{1,6}(?:\\.\\d{1,4})?";
    private static final String PART = "(?:(?<whole>" + NUMBER + ")(?:[ -]+(?<over>\\d{1,3})/(?<under>\\d{1,3}))?"
            + "|(?<over2>\\d{1,3})/(?<under2>\\d{1,3}))";
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(?<feet>\\d{1,4}) ?(?:'|ft\\.?|foot|feet|pies?\\.?)(?:[ -]*| y )" + PART
                    + " ?(?:\"|in\\.?|inch|inches|pulg\\.?|pulgadas?)?");
    private static final Pattern WITH_UNIT = Pattern.compile(PART + " ?(?<unit>\"|'|\\p{L}+)\\.?");
    private static final Pattern BARE = Pattern.compile(PART);
    private static final Pattern UNIT_AT_THE_END = Pattern.compile(".*?(\"|mm|cm|m|in|inch|inches|pulg|pulgadas?)\\.?");
    private static final Pattern GROUPED = Pattern.compile(".*\\d,\\d{3}(?!\\d).*");
    private static final Set<Integer> DENOMINATORS = Set.of(2, 4, 8, 16, 32, 64);

    private Lengths() {}

    /** @param unit that of the column, where the header or a person says it */
    public static LengthReading read(String text, @Nullable LengthUnit unit) {
        String plain = TypedText.plain(text);
        if (GROUPED.matcher(plain).matches()) return new LengthReading.Wrong(ScheduleSaid.COMMA.with());
        plain = plain.replace(',', '.');
        Matcher feet = FEET_AND_INCHES.matcher(plain);
        if (feet.matches()) return feetAndInches(feet);
        Matcher with = WITH_UNIT.matcher(plain);
        if (with.matches())
            return LengthUnit.spelt(with.group("unit"))
                    .map(own -> amount(with, own))
                    .orElseGet(() -> new LengthReading.Wrong(ScheduleSaid.UNKNOWN_UNIT.with()));
        Matcher bare = BARE.matcher(plain);
        if (!bare.matches())
            return new LengthReading.Wrong((plain.isEmpty() ? ScheduleSaid.BLANK : ScheduleSaid.NO_LENGTH).with());
        return unit == null ? new LengthReading.NoUnit() : amount(bare, unit);
    }

    private static LengthReading feetAndInches(Matcher found) {
        LengthReading inches = amount(found, LengthUnit.INCH);
        if (!(inches instanceof LengthReading.Read(BigDecimal rest))) return inches;
        if (rest.compareTo(LengthUnit.FOOT.millimetres()) >= 0)
            return new LengthReading.Wrong(ScheduleSaid.TWELVE_INCHES.with());
        return new LengthReading.Read(new BigDecimal(found.group("feet"))
                .multiply(LengthUnit.FOOT.millimetres())
                .add(rest));
    }

    private static LengthReading amount(Matcher found, LengthUnit unit) {
        String whole = found.group("whole");
        String over = whole == null ? found.group("over2") : found.group("over");
        String under = whole == null ? found.group("under2") : found.group("under");
        BigDecimal number = whole == null ? BigDecimal.ZERO : new BigDecimal(whole);
        if (over == null || under == null) return new LengthReading.Read(number.multiply(unit.millimetres()));
        if (unit.metric()) return new LengthReading.Wrong(ScheduleSaid.METRIC_FRACTION.with());
        int numerator = Integer.parseInt(over);
        int denominator = Integer.parseInt(under);
        if (number.scale() > 0 || !DENOMINATORS.contains(denominator) || numerator < 1 || numerator >= denominator)
            return new LengthReading.Wrong(ScheduleSaid.ODD_FRACTION.with());
        BigDecimal fraction = new BigDecimal(numerator).divide(new BigDecimal(denominator));
        return new LengthReading.Read(number.add(fraction).multiply(unit.millimetres()));
    }

    /** Width and height of one cell, in that order, each as it stands; none where it is not two lengths with x between. */
    static List<String> pair(String text) {
        List<String> sides = List.of(TypedText.plain(text).split("\\s*(?:x|\\b(?:by|por)\\b)\\s*", -1));
        if (sides.size() != 2 || sides.contains("")) return List.of();
        String first = sides.getFirst();
        String second = sides.getLast();
        boolean turned = first.endsWith("h") && !first.endsWith("inch") && second.endsWith("w");
        String width = bareSide(turned ? second : first);
        String height = bareSide(turned ? first : second);
        return List.of(withUnitOf(width, height), withUnitOf(height, width));
    }

    private static String bareSide(String side) {
        return side.endsWith("inch") ? side : side.replaceFirst("\\s*[wh]$", "");
    }

    /** In {@code 900 x 1500 mm} the unit stands for both. */
    private static String withUnitOf(String side, String other) {
        Matcher unit = UNIT_AT_THE_END.matcher(other);
        boolean bare = side.matches("[\\d ./]+");
        return bare && !other.contains("'") && unit.matches() ? side + " " + unit.group(1) : side;
    }
}
