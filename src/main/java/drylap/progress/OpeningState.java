package drylap.progress;

import drylap.assembly.Apron;
import drylap.assembly.AsBuilt;
import drylap.assembly.Lap;
import drylap.assembly.MarkCheck;
import drylap.assembly.RainCheck;
import drylap.assembly.RainRating;
import drylap.assembly.Weakness;
import drylap.assembly.WorkLine;
import drylap.assembly.WorkList;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.sites.Opening;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An opening as its log says that it stands.
 *
 * @param doneLines in the order of the work list
 * @param next the lines that a person may mark now, whatever their trade; the release is the hand-off's
 * @param exposures the layers in the sun
 * @param lastMark the newest entry, undone ones included
 * @param version that entry's number, 0 for none: a newer one says that this state is old
 */
public record OpeningState(
        FolderId folder,
        Opening opening,
        List<LineDone> doneLines,
        AsBuilt built,
        RainCheck check,
        List<WorkLine> next,
        List<Exposed> exposures,
        @Nullable Mark lastMark,
        long version) {
    public OpeningState {
        doneLines = List.copyOf(doneLines);
        next = List.copyOf(next);
        exposures = List.copyOf(exposures);
    }

    public SiteId site() {
        return opening.facade().site();
    }

    public WorkList list() {
        return opening.workList();
    }

    /** The codes of the done lines. */
    public Set<String> done() {
        return doneLines.stream().map(one -> one.line().code()).collect(Collectors.toUnmodifiableSet());
    }

    public Optional<LineDone> done(WorkLine line) {
        return doneLines.stream().filter(one -> one.line().equals(line)).findFirst();
    }

    public RainRating rating() {
        return check.rating();
    }

    public List<Weakness> weaknesses() {
        return check.weaknesses();
    }

    /** Laps whose under layer is not there although the over layer waits for it. */
    public List<Lap> missing() {
        return built.missing();
    }

    public Apron apron() {
        return built.apron();
    }

    /** The one plane that this opening's apron drains to, whether it is on yet or not. */
    public Apron.Plane plane() {
        return Apron.Plane.of(opening.secondLayer());
    }

    public MarkCheck check(WorkLine line) {
        return list().check(done(), line);
    }

    public boolean installed() {
        return list().installed(done());
    }

    public boolean released() {
        return done(list().release()).isPresent();
    }

    /** Not released, and nothing that the release waits for is undone. */
    public boolean releasable() {
        return check(list().release()) instanceof MarkCheck.ByRelease;
    }

    /** How far the numbered list is done without a gap, as a job folder writes it. */
    public int doneUpTo() {
        var done = done();
        return list().lines().stream()
                .filter(line -> line.number().isPresent())
                .takeWhile(line -> done.contains(line.code()))
                .mapToInt(line -> line.number().getAsInt())
                .max()
                .orElse(0);
    }

    /** When the line of {@link #doneUpTo} was done, where known. */
    public @Nullable Instant doneUpToAt() {
        int last = doneUpTo();
        return latest(doneLines.stream()
                .filter(one -> one.line().number().orElse(Integer.MAX_VALUE) <= last)
                .toList());
    }

    /** Which tasks of a plan the log shows as done, in their order. */
    public List<FinishedTask> finished() {
        List<FinishedTask> finished = new ArrayList<>();
        for (Task task : opening.designedTasks())
            if (isFinished(task)) finished.add(new FinishedTask(task, latest(linesOf(task))));
        return List.copyOf(finished);
    }

    private boolean isFinished(Task task) {
        return task == Task.INSTALL ? installed() : list().finished(done(), task.trade());
    }

    private List<LineDone> linesOf(Task task) {
        return doneLines.stream()
                .filter(one -> task == Task.INSTALL
                        ? one.line().installBlock()
                        : one.line().trade() == task.trade() && task.trade() != Trade.WINDOW)
                .toList();
    }

    private static @Nullable Instant latest(List<LineDone> lines) {
        return lines.stream()
                .map(LineDone::at)
                .filter(at -> at != null)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }
}
