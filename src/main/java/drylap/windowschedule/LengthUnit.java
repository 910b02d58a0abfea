package drylap.windowschedule;

import drylap.kernel.Coded;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A unit of length in a window schedule, spelt in English or Spanish; an inch is 25.4 mm exactly (NIST SP 811, appendix B). */
public enum LengthUnit implements Coded {
    INCH("in", "inches", "25.4", "in", "inch", "inches", "pulg", "pulgada", "pulgadas", "\""),
    FOOT("ft", "feet", "304.8", "ft", "foot", "feet", "pie", "pies", "'"),
    MILLIMETRE(
            "mm",
            "millimetres",
            "1",
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
            "milímetro",
            "milímetros"),
    CENTIMETRE(
            "cm",
            "centimetres",
            "10",
            "cm",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
            "centímetro",
            "centímetros"),
    METRE("m", "metres", "1000", "m", "metre", "metres", "meter", "meters", "metro", "metros");

    private final String code;
    private final String words;
    private final BigDecimal millimetres;
    private final List<String> spellings;

    LengthUnit(String code, String words, String millimetres, String... spellings) {
        this.code = code;
        this.words = words;
        this.millimetres = new BigDecimal(millimetres);
        this.spellings = List.of(spellings);
    }

    /** The unit that is spelt so, in lower case and without a full stop. */
    static Optional<LengthUnit> spelt(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(text))
                .findFirst();
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** How many millimetres one of it has, exactly. */
    public BigDecimal millimetres() {
        return millimetres;
    }

    boolean metric() {
        return this != INCH && this != FOOT;
    }
}
