package drylap.speech;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/**
 * Says things the way that someone reads. Months are words, so that no order of day and month can be mistaken; hours are those of
 * a 24 hour clock, as everywhere in the house.
 */
public record Speech(Reading reading) {
    /** For commands, logs and whatever is not translated. */
    public static final Speech ENGLISH = new Speech(Reading.USUAL);

    private static final double MM_PER_M = 1_000;
    private static final double MM_PER_FOOT = 304.8;

    public Language language() {
        return reading.language();
    }

    /**
     * A sentence whose English stands in the code, with its places filled. What has no words in the language is said in English;
     * {@code SpeechTests} keeps the catalogue whole.
     */
    public String it(String english, Object... parts) {
        return Pattern.of(locale(), Catalogue.in(language(), english)).with(said(parts));
    }

    public String it(Saying saying) {
        return it(saying.english(), saying.parts().toArray());
    }

    private Object[] said(Object[] parts) {
        Object[] said = parts.clone();
        for (int i = 0; i < said.length; i++) if (said[i] instanceof Part part) said[i] = part.in(this);
        return said;
    }

    public String clock(Instant instant, ZoneId zone) {
        return formatted("HH:mm").format(instant.atZone(zone));
    }

    public String weekday(LocalDate date) {
        return formatted("EEE").format(date);
    }

    /** Such as "14 Apr". */
    public String date(LocalDate date) {
        return formatted("d MMM").format(date);
    }

    /** Such as "Tue 14 Apr". */
    public String day(TemporalAccessor date) {
        return formatted("EEE d MMM").format(date);
    }

    /** Such as "Tue 14 Apr 09:30". */
    public String moment(Instant instant, ZoneId zone) {
        return moment(instant.atZone(zone));
    }

    /** By the clock that it was read from. */
    public String moment(TemporalAccessor at) {
        return formatted("EEE d MMM HH:mm").format(at);
    }

    /** Such as "14 Apr 2026". */
    public String dateOfYear(LocalDate date) {
        return formatted("d MMM uuuu").format(date);
    }

    /** Such as "April 2026". */
    public String month(YearMonth month) {
        return formatted("MMMM uuuu").format(month);
    }

    /** Such as "Apr". */
    public String shortMonth(YearMonth month) {
        return formatted("MMM").format(month);
    }

    /** Such as "Tue 14 Apr 2026", and its hour and minute where there is one. */
    String dated(TemporalAccessor at) {
        String clock = at.isSupported(ChronoField.HOUR_OF_DAY) ? " HH:mm" : "";
        return formatted("EEE d MMM uuuu" + clock).format(at);
    }

    /** With as many decimals as asked for. */
    public String number(double value, int decimals) {
        return String.format(locale(), "%." + decimals + "f", value);
    }

    /** Such as "1408 mm" or "55 7/16 in". */
    public String length(double millimetres) {
        return length(millimetres, reading.ruler());
    }

    /** Both ways, one's own first: for what is cut, where a slip costs a roll. */
    public String lengths(double millimetres) {
        Ruler other = reading.ruler() == Ruler.INCHES ? Ruler.MILLIMETRES : Ruler.INCHES;
        return "%s (%s)".formatted(length(millimetres), length(millimetres, other));
    }

    /** Such as "22.9 m" or "75.1 ft". */
    public String stretch(double millimetres, int decimals) {
        return reading.ruler() == Ruler.INCHES
                ? it("{0} ft", number(millimetres / MM_PER_FOOT, decimals))
                : "%s m".formatted(number(millimetres / MM_PER_M, decimals));
    }

    /** Such as "900 × 1200 mm". */
    public String size(double widthMm, double heightMm) {
        Ruler ruler = reading.ruler();
        String both = "%s × %s".formatted(Lengths.number(widthMm, ruler), Lengths.number(heightMm, ruler));
        return withUnit(both, ruler);
    }

    private String length(double millimetres, Ruler ruler) {
        return withUnit(Lengths.number(millimetres, ruler), ruler);
    }

    private String withUnit(String number, Ruler ruler) {
        return ruler == Ruler.INCHES ? it("{0} in", number) : "%s mm".formatted(number);
    }

    private DateTimeFormatter formatted(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, locale());
    }

    private Locale locale() {
        return language().locale();
    }
}
