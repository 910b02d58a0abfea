package drylap.tables;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** What a cell of a table holds. */
public sealed interface Cell {
    record Text(String words) implements Cell {}

    /** @param unit as the head of its column says it; empty for a bare number */
    record Number(double value, String unit) implements Cell {}

    record Day(LocalDate date) implements Cell {}

    /** By the clock on the wall of the place that it is about; workbooks know no time zones. */
    record Time(LocalDateTime at) implements Cell {}

    /** A number of something. */
    static Cell count(long value) {
        return new Number(value, "");
    }
}
