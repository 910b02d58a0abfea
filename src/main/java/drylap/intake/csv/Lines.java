package drylap.intake.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** The text of one file on its way out: RFC 4180 with LF line ends, null and absent cells blank. */
public final class Lines {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx");
    private static final DateTimeFormatter EXACT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.nnnnnnnnnxxx");

    private final StringBuilder text = new StringBuilder();
    private final CSVPrinter printer;
    private final Header header;

    public Lines(Header header) {
        this.header = header;
        try {
            printer = new CSVPrinter(text, FORMAT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        add(header.columns().toArray());
    }

    public Lines add(@Nullable Object... cells) {
        if (cells.length != header.columns().size())
            throw new IllegalArgumentException("%s has %d columns, not %d"
                    .formatted(header.file(), header.columns().size(), cells.length));
        try {
            printer.printRecord(cells);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** In the clock time of the zone, to the minute where that says it all. */
    public static @Nullable String time(@Nullable Instant instant, ZoneId zone) {
        if (instant == null) return null;
        OffsetDateTime local = instant.atZone(zone).toOffsetDateTime();
        boolean toTheMinute = local.getSecond() == 0 && local.getNano() == 0;
        return (toTheMinute ? MINUTES : EXACT).format(local);
    }

    /** The shortest digits that read back as the same number, without an exponent. */
    public static String number(double number) {
        return number == 0
                ? "0"
                : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    public static @Nullable String yes(boolean yes) {
        return yes ? "yes" : null;
    }

    public String file() {
        return header.file();
    }

    public String text() {
        return text.toString();
    }
}
