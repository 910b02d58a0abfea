package drylap.intake.csv;

import drylap.intake.FolderWords;
import drylap.kernel.Coded;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * One line of a table, read cell by cell. A cell that cannot be read becomes a problem, and a harmless stand-in is
 * answered so that the other cells of the line are looked at too; use the result only if the row is still sound.
 */
public final class Row {
    private static final LocalDate STAND_IN = LocalDate.of(2000, 1, 1);

    private final Table table;
    private final int line;
    private final CSVRecord cells;
    private final Map<String, Integer> places;
    private boolean sound = true;

    Row(Table table, int line, CSVRecord cells, Map<String, Integer> places) {
        this.table = table;
        this.line = line;
        this.cells = cells;
        this.places = places;
    }

    public int line() {
        return line;
    }

    public boolean sound() {
        return sound;
    }

    public String file() {
        return table.header().file();
    }

    /** The cell as it stands; blank where the column is absent. */
    public String raw(String column) {
        Integer place = places.get(column);
        return place == null ? "" : cells.get(place);
    }

    public boolean blank(String column) {
        return raw(column).isBlank();
    }

    public void wrong(String column, String wrong, String accepted) {
        sound = false;
        table.report(line, column, wrong, raw(column), accepted);
    }

    /** Reads an optional cell: null where it is absent or blank. */
    public <T> @Nullable T optional(String column, Function<String, T> read) {
        return blank(column) ? null : read.apply(column);
    }

    /** A name or id: not blank, no spaces around it, no control characters, at most 100 characters. */
    public String text(String column) {
        String value = raw(column);
        String fault = Cell.faultOfText(value);
        return fault == null ? value : standIn(column, fault, Cell.TEXT, "?");
    }

    public int whole(String column, String unit, int least, int most) {
        return (int) Math.round(number(column, new Range(unit, least, most, true)));
    }

    public double number(String column, String unit, double least, double most) {
        return number(column, new Range(unit, least, most, false));
    }

    public double number(String column, Range range) {
        String value = raw(column);
        String fault = range.fault(value);
        return fault == null ? Double.parseDouble(value) + 0.0 : standIn(column, fault, range.text(), range.least());
    }

    /** An exact decimal, for sums that must not gather rounding. */
    public BigDecimal decimal(String column, String unit, int least, int most) {
        Range range = new Range(unit, least, most, false);
        String value = raw(column);
        String fault = range.faultOfPlain(value);
        return fault == null ? new BigDecimal(value) : standIn(column, fault, range.text(), BigDecimal.valueOf(least));
    }

    public <E extends Enum<E> & Coded> E coded(String column, Class<E> type) {
        String accepted = FolderWords.ONE_OF.with(Coded.codes(type));
        return Coded.parse(type, raw(column))
                .orElseGet(() -> standIn(
                        column,
                        (blank(column) ? FolderWords.BLANK : FolderWords.UNKNOWN).with(),
                        accepted,
                        type.getEnumConstants()[0]));
    }

    public LocalDate date(String column) {
        return parsed(column, Cell::date, FolderWords.NO_DATE, Cell.DATE, STAND_IN);
    }

    public LocalTime clock(String column) {
        return parsed(column, Cell::clock, FolderWords.NO_CLOCK, Cell.CLOCK, LocalTime.MIDNIGHT);
    }

    public Instant instant(String column) {
        return parsed(column, Cell::instant, FolderWords.NO_INSTANT, Cell.INSTANT, Instant.EPOCH);
    }

    public ZoneId zone(String column) {
        return parsed(column, Cell::zone, FolderWords.NO_ZONE, Cell.ZONE, java.time.ZoneOffset.UTC);
    }

    /** {@code yes} or {@code no}; absent or blank is no. */
    public boolean yes(String column) {
        String value = raw(column);
        if (value.equals("yes")) return true;
        if (!value.isEmpty() && !value.equals("no"))
            wrong(column, FolderWords.NEITHER.with(), FolderWords.YES_OR_NO.with());
        return false;
    }

    private <T> T parsed(
            String column, Function<String, @Nullable T> parse, FolderWords fault, String accepted, T standIn) {
        T value = parse.apply(raw(column));
        return value != null
                ? value
                : standIn(column, (blank(column) ? FolderWords.BLANK : fault).with(), accepted, standIn);
    }

    private <T> T standIn(String column, String fault, String accepted, T standIn) {
        wrong(column, fault, accepted);
        return standIn;
    }
}
