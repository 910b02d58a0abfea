package drylap.windowschedule;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rough opening of a row: as the schedule writes it, or else the frame with its clearance. Where both stand there, the rough opening
 * counts and may not be smaller than the frame.
 */
final class Sides {
    private static final int LEAST_MM = 100;
    private static final int MOST_MM = 20_000;

    private final RowCells cells;
    private final BigDecimal clearanceMm;

    private record Given(Field field, BigDecimal millimetres) {}

    /** @param clearanceMm by how much a rough opening is wider and higher than its frame, both sides together */
    Sides(RowCells cells, double clearanceMm) {
        this.cells = cells;
        this.clearanceMm = BigDecimal.valueOf(clearanceMm);
    }

    @Nullable
    Integer width() {
        return side(Field.ROUGH_WIDTH, Field.FRAME_WIDTH, true);
    }

    @Nullable
    Integer height() {
        return side(Field.ROUGH_HEIGHT, Field.FRAME_HEIGHT, false);
    }

    private @Nullable Integer side(Field roughField, Field frameField, boolean width) {
        int faultsBefore = cells.faults().size();
        Given rough = given(roughField, Field.ROUGH_SIZE, width);
        Given frame = given(frameField, Field.FRAME_SIZE, width);
        if (cells.faults().size() > faultsBefore) return null;
        if (rough != null && frame != null && rough.millimetres().compareTo(frame.millimetres()) < 0)
            cells.wrong(rough.field(), ScheduleSaid.SMALLER.with(), ScheduleSaid.AS_LARGE.with());
        if (rough != null) return bounded(rough.field(), rough.millimetres());
        if (frame != null) return bounded(frame.field(), frame.millimetres().add(clearanceMm));
        Field asked = asked(frameField, roughField);
        // a cell of both sides was told with the width
        boolean told = !width && (asked == Field.ROUGH_SIZE || asked == Field.FRAME_SIZE);
        if (!told) cells.wrong(asked, ScheduleSaid.BLANK.with(), ScheduleSaid.A_SIZE.with());
        return null;
    }

    /** The field to put it right in: one that the row has. */
    private Field asked(Field frameField, Field roughField) {
        return Stream.of(roughField, frameField, Field.ROUGH_SIZE, Field.FRAME_SIZE)
                .filter(cells::has)
                .findFirst()
                .orElse(frameField);
    }

    private @Nullable Given given(Field own, Field pair, boolean width) {
        if (!cells.blank(own)) return of(own, cells.length(own, cells.text(own)));
        return cells.blank(pair) ? null : of(pair, cells.ofPair(pair, width));
    }

    private static @Nullable Given of(Field field, @Nullable BigDecimal millimetres) {
        return millimetres == null ? null : new Given(field, millimetres);
    }

    private @Nullable Integer bounded(Field field, BigDecimal millimetres) {
        int whole = RowCells.whole(millimetres);
        if (whole >= LEAST_MM && whole <= MOST_MM) return whole;
        cells.wrong(
                field,
                (whole < LEAST_MM ? ScheduleSaid.TOO_SMALL : ScheduleSaid.TOO_LARGE).with(),
                ScheduleSaid.ROUGH_RANGE.with(LEAST_MM, MOST_MM));
        return null;
    }
}
