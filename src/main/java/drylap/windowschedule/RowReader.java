package drylap.windowschedule;

import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.kernel.Coded;
import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.sites.OpeningNote;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the rows of a draft against the job folder that they go into. */
final class RowReader {
    static final int MOST_OF_A_ROW = 500;
    private static final int LONGEST_MARK = 60;
    private static final int HIGHEST_SILL_MM = 20_000;
    private static final int LONGEST_WALL_MM = 1_000_000;
    private static final Pattern COUNT = Pattern.compile("(\\d{1,4})");

    private final Draft draft;
    private final Walls walls;
    private final double clearanceMm;

    /** @param stoodIn fields that the row leaves out, so that what was said for the whole schedule holds */
    record Reading(List<CellFault> faults, Optional<ReadRow> row, Set<Field> stoodIn) {}

    RowReader(Draft draft, JobFolder folder) {
        this.draft = draft;
        walls = new Walls(folder.facades(), draft.choices().site());
        clearanceMm = folder.rules().at(draft.choices().site()).value(Rule.ROUGH_CLEARANCE_MM);
    }

    Reading read(Sheet.Row row) {
        var one = new OneRow(new RowCells(draft, row));
        return one.read(row.number());
    }

    private final class OneRow {
        private final RowCells cells;
        private final Set<Field> stoodIn = EnumSet.noneOf(Field.class);

        OneRow(RowCells cells) {
            this.cells = cells;
        }

        Reading read(int number) {
            String mark = mark();
            Integer quantity = cells.blank(Field.QUANTITY)
                    ? Integer.valueOf(1)
                    : cells.whole(Field.QUANTITY, COUNT, 1, MOST_OF_A_ROW);
            FacadeId facade = facade();
            Integer level = level();
            var sides = new Sides(cells, clearanceMm);
            Integer width = sides.width();
            Integer height = sides.height();
            Frame frame = frame();
            Method method = method();
            OpeningNote note = note(mark);
            if (quantity == null
                    || facade == null
                    || level == null
                    || width == null
                    || height == null
                    || frame == null
                    || method == null
                    || !cells.sound()) return new Reading(cells.faults(), Optional.empty(), stoodIn);
            var read =
                    new ReadRow(number, mark, quantity, facade, level, width, height, frame, method, note.xMm(), note);
            return new Reading(List.of(), Optional.of(read), stoodIn);
        }

        private String mark() {
            String mark = cells.text(Field.MARK);
            String accepted = ScheduleSaid.NAME.with(LONGEST_MARK);
            if (mark.isEmpty()) cells.wrong(Field.MARK, ScheduleSaid.BLANK.with(), accepted);
            else if (mark.length() > LONGEST_MARK) cells.wrong(Field.MARK, ScheduleSaid.TOO_LONG.with(), accepted);
            else if (mark.codePoints().anyMatch(Character::isISOControl))
                cells.wrong(Field.MARK, ScheduleSaid.CONTROL.with(), accepted);
            return mark;
        }

        private @Nullable FacadeId facade() {
            if (cells.blank(Field.ELEVATION))
                return stoodIn(Field.ELEVATION, draft.choices().standIns().wall(), this::wall);
            FacadeId wall = walls.of(
                            cells.text(Field.ELEVATION), draft.choices().walls())
                    .map(Facade::id)
                    .orElse(null);
            if (wall == null)
                cells.wrong(
                        Field.ELEVATION,
                        ScheduleSaid.NO_FACADE.with(),
                        ScheduleSaid.FACADES.with(String.join(", ", walls.names())));
            return wall;
        }

        private @Nullable FacadeId wall(String name) {
            return walls.names().contains(name) ? new FacadeId(draft.choices().site(), name) : null;
        }

        private @Nullable Integer level() {
            if (cells.blank(Field.LEVEL))
                return stoodIn(Field.LEVEL, draft.choices().standIns().level(), Function.identity());
            Integer chosen = draft.choices().levels().get(cells.text(Field.LEVEL));
            return chosen != null ? chosen : cells.whole(Field.LEVEL, LevelText.SHAPE, 1, LevelText.HIGHEST);
        }

        private @Nullable Frame frame() {
            if (cells.blank(Field.MATERIAL))
                return stoodIn(Field.MATERIAL, draft.choices().standIns().frame(), Function.identity());
            Optional<Frame> frame = MaterialText.read(cells.text(Field.MATERIAL));
            if (frame.isEmpty()) cells.wrong(Field.MATERIAL, ScheduleSaid.NO_MATERIAL.with(), MaterialText.ACCEPTED);
            return frame.orElse(null);
        }

        private @Nullable Method method() {
            return cells.blank(Field.METHOD)
                    ? stoodIn(Field.METHOD, draft.choices().standIns().method(), Function.identity())
                    : written();
        }

        private @Nullable Method written() {
            String text = cells.text(Field.METHOD);
            Optional<Method> method = MethodText.read(text, draft.choices().letters());
            if (method.isEmpty() && MethodText.bareLetter(text).isPresent())
                cells.wrong(Field.METHOD, ScheduleSaid.TWO_WAYS.with(), ScheduleSaid.LETTERS.with());
            else if (method.isEmpty())
                cells.wrong(
                        Field.METHOD, ScheduleSaid.UNKNOWN.with(), ScheduleSaid.ONE_OF.with(Coded.codes(Method.class)));
            return method.orElse(null);
        }

        private <C, T> @Nullable T stoodIn(Field field, @Nullable C chosen, Function<C, @Nullable T> read) {
            stoodIn.add(field);
            T standIn = chosen == null ? null : read.apply(chosen);
            if (standIn == null) cells.wrong(field, ScheduleSaid.BLANK.with(), ScheduleSaid.SAYS_IT.with());
            return standIn;
        }

        private OpeningNote note(String mark) {
            return new OpeningNote(
                    mark,
                    cells.optionalLength(Field.SILL_HEIGHT, HIGHEST_SILL_MM),
                    cells.optionalLength(Field.X_POSITION, LONGEST_WALL_MM),
                    cells.text(Field.HEAD_DETAIL),
                    cells.text(Field.JAMB_DETAIL),
                    cells.text(Field.SILL_DETAIL),
                    cells.text(Field.REMARKS));
        }
    }
}
