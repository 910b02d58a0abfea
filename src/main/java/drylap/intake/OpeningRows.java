package drylap.intake;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.sites.Opening;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The rows of {@code openings.csv}. */
final class OpeningRows {
    static final int HIGHEST_LEVEL = 200;

    private OpeningRows() {}

    static List<Opening> read(Table table, Known known) {
        List<Opening> openings = new ArrayList<>();
        table.each(row -> {
            Opening opening = opening(row, known);
            known.openings.claim(row, "opening", opening.id());
            if (!row.sound()) return;
            openings.add(opening);
            known.openingById.put(opening.id(), opening);
        });
        return openings;
    }

    private static Opening opening(Row row, Known known) {
        Method method = row.coded("method", Method.class);
        Approach approach = row.coded("approach", Approach.class);
        int done = done(row, StepList.of(method, approach));
        return new Opening(
                new OpeningId(row.text("opening")),
                FacadeRows.reference(row, known),
                row.whole("level", "", 1, HIGHEST_LEVEL),
                row.whole("width_mm", "mm", 100, 20_000),
                row.whole("height_mm", "mm", 100, 20_000),
                row.coded("frame", Frame.class),
                method,
                approach,
                row.coded("second_layer", SecondLayer.class),
                row.date("delivered_on"),
                row.yes("water_test"),
                row.blank("priority") ? 0 : row.whole("priority", "", 0, 100),
                done,
                doneAt(row, done),
                finished(row));
    }

    /** The limit is the method's own, so it is only asked when the method could be read. */
    private static int done(Row row, StepList list) {
        if (row.blank("done") || !row.sound()) return 0;
        return row.whole("done", "", 0, list.last());
    }

    private static @Nullable Instant doneAt(Row row, int done) {
        Instant doneAt = row.optional("done_at", row::instant);
        if (doneAt != null && done == 0 && row.sound())
            row.wrong("done_at", FolderWords.DONE_AT.with(), FolderWords.BLANK_OR_DONE.with());
        return doneAt;
    }

    private static Set<Task> finished(Row row) {
        Set<Task> finished = EnumSet.noneOf(Task.class);
        if (row.blank("finished")) return finished;
        for (String code : row.raw("finished").split(";", -1)) {
            Optional<Task> task = Coded.parse(Task.class, code.strip()).filter(one -> one != Task.INSTALL);
            task.ifPresent(finished::add);
            if (task.isEmpty()) {
                row.wrong("finished", FolderWords.NO_TASK.with(), FolderWords.TASKS.with());
                return finished;
            }
        }
        return finished;
    }

    static Lines write(List<Opening> openings, Zones zones) {
        Lines lines = new Lines(ContractFiles.OPENINGS);
        for (Opening opening : openings)
            lines.add(
                    opening.facade().site(),
                    opening.facade().facade(),
                    opening.level(),
                    opening.id(),
                    opening.widthMm(),
                    opening.heightMm(),
                    opening.frame().code(),
                    opening.method().code(),
                    opening.approach().code(),
                    opening.secondLayer().code(),
                    opening.deliveredOn(),
                    Lines.yes(opening.waterTest()),
                    opening.priority() == 0 ? null : opening.priority(),
                    opening.done() == 0 ? null : opening.done(),
                    Lines.time(opening.doneAt(), zones.of(opening.facade().site())),
                    opening.finished().stream().sorted().map(Task::code).collect(Collectors.joining(";")));
        return lines;
    }
}
