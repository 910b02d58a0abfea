package drylap.windowschedule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The cells of one row of a draft; what cannot be read becomes a fault, and reading goes on. */
final class RowCells {
    private final Draft draft;
    private final Sheet.Row row;
    private final List<CellFault> faults = new ArrayList<>();

    RowCells(Draft draft, Sheet.Row row) {
        this.draft = draft;
        this.row = row;
    }

    List<CellFault> faults() {
        return List.copyOf(faults);
    }

    boolean sound() {
        return faults.isEmpty();
    }

    String text(Field field) {
        return draft.text(row, field);
    }

    boolean has(Field field) {
        return draft.columns().containsKey(field);
    }

    boolean blank(Field field) {
        return text(field).isEmpty();
    }

    void wrong(Field field, String wrong, String accepted) {
        faults.add(new CellFault(row.number(), field, draft.letters(field), wrong, text(field), accepted));
    }

    /** A whole number, after whatever the pattern allows before and behind its first group; null where it is none. */
    @Nullable
    Integer whole(Field field, Pattern shape, int least, int most) {
        Matcher found = shape.matcher(TypedText.plain(text(field)));
        String accepted = ScheduleSaid.WHOLE.with(least, most);
        if (!found.matches()) {
            wrong(field, ScheduleSaid.NOT_WHOLE.with(), accepted);
            return null;
        }
        int number = Integer.parseInt(found.group(1));
        if (number >= least && number <= most) return number;
        wrong(field, (number < least ? ScheduleSaid.TOO_SMALL : ScheduleSaid.TOO_LARGE).with(), accepted);
        return null;
    }

    /** Millimetres, exactly; null where it is no length. */
    @Nullable
    BigDecimal length(Field field, String text) {
        return switch (Lengths.read(text, draft.unit(field))) {
            case LengthReading.Read(var millimetres) -> millimetres;
            case LengthReading.Wrong(var wrong) -> noLength(field, wrong, Lengths.ACCEPTED);
            case LengthReading.NoUnit _ -> noLength(field, ScheduleSaid.NO_UNIT.with(), ScheduleSaid.A_UNIT.with());
        };
    }

    /** Whole millimetres, halves up; null where the cell is blank or faulty. */
    @Nullable
    Integer optionalLength(Field field, int mostMm) {
        if (blank(field)) return null;
        BigDecimal millimetres = length(field, text(field));
        if (millimetres == null) return null;
        int whole = whole(millimetres);
        if (whole <= mostMm) return whole;
        wrong(field, ScheduleSaid.TOO_LARGE.with(), ScheduleSaid.BLANK_OR_LENGTH.with(mostMm));
        return null;
    }

    /** The width or height that a cell of both holds; null where it is faulty, which is told once for both. */
    @Nullable
    BigDecimal ofPair(Field field, boolean width) {
        List<String> pair = Lengths.pair(text(field));
        if (pair.isEmpty())
            return width ? noLength(field, ScheduleSaid.NO_PAIR.with(), ScheduleSaid.A_PAIR.with()) : null;
        return length(field, pair.get(width != heightFirst(field) ? 0 : 1));
    }

    private boolean heightFirst(Field field) {
        Integer column = draft.columns().get(field);
        return column != null && new Title(draft.header().titles().get(column)).heightFirst();
    }

    private @Nullable BigDecimal noLength(Field field, String wrong, String accepted) {
        wrong(field, wrong, accepted);
        return null;
    }

    static int whole(BigDecimal millimetres) {
        return millimetres.setScale(0, RoundingMode.HALF_UP).intValueExact();
    }
}
