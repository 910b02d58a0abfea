package drylap.audit;

import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Judges where one visit of a plan may go: the whole plan is audited with it there, and compared with the plan as it is. */
public final class MoveJudge {
    private final JobFolder folder;
    private final JobBook book;
    private final Plan plan;
    private final Visit visit;
    private final @Nullable Instant now;
    private final MovedPlan.Judged before;

    private MoveJudge(JobFolder folder, Plan plan, Visit visit, @Nullable Instant now) {
        this.folder = folder;
        this.plan = plan;
        this.visit = visit;
        this.now = now;
        book = new JobBook(folder, now);
        before = new MovedPlan(heldBy(visit), stillToDo()).judged(now);
    }

    /**
     * Judges moves of the visit of a task.
     *
     * @param folder all of it, as it stands by now
     * @param clock the time of day; where it lies within the folder's shifts, what is moved goes to no earlier moment
     * @return nothing where the plan has no such visit, or its task is done by now
     */
    public static Optional<MoveJudge> of(JobFolder folder, Plan plan, OpeningId opening, Task task, Instant clock) {
        JobBook book = new JobBook(folder, null);
        return plan.visits().stream()
                .filter(one -> one.opening().equals(opening) && one.task() == task)
                .filter(one -> toDo(book, one.opening(), one.task()))
                .findFirst()
                .map(one -> new MoveJudge(folder, plan, one, fromWhen(book, clock)));
    }

    /** A folder of the past is judged from its first shift, as it is planned. */
    private static @Nullable Instant fromWhen(JobBook book, Instant clock) {
        Instant first = book.folder().shifts().stream()
                .map(Shift::startsAt)
                .min(Comparator.naturalOrder())
                .orElse(Instant.MAX);
        return first.isBefore(clock) && book.horizonEnd().isAfter(clock) ? clock : null;
    }

    public Visit visit() {
        return visit;
    }

    /** What the move breaks and mends, and what it costs. */
    public MoveVerdict judge(CrewId crew, Instant start) {
        Visit is = moved(crew, start);
        MovedPlan.Judged after = movedTo(is).judged(now);
        return new MoveVerdict(
                visit, is, before.brokenIn(after, visit), after.mendedOf(before), before.ledger(), after.ledger());
    }

    /**
     * The plan with the visit there: what is done by now is gone, and its costs are the audit's.
     *
     * @param standing the folder by now, in which the visit may be pinned already
     */
    public Plan plan(JobFolder standing, CrewId crew, Instant start) {
        MovedPlan moved = movedTo(moved(crew, start));
        List<UnplannedTask> left = plan.unplanned().stream()
                .filter(task -> toDo(book, task.opening(), task.task()))
                .toList();
        AuditReport report = Audit.of(
                standing, new ClaimedPlan(moved.visits(), ClaimedPlan.unplanned(left), null, null, null), plan.start());
        return new Plan(
                plan.start(),
                plan.horizonEnd(),
                moved.visits(),
                left,
                report.coverNow(),
                plan.openHours(),
                report.ledger());
    }

    private MovedPlan movedTo(Visit is) {
        List<Visit> visits = stillToDo().stream()
                .map(one -> TaskKey.of(one).equals(TaskKey.of(is)) ? is : one)
                .toList();
        return new MovedPlan(heldBy(is), visits);
    }

    private List<Visit> stillToDo() {
        return plan.visits().stream()
                .filter(one -> toDo(book, one.opening(), one.task()))
                .toList();
    }

    private static boolean toDo(JobBook book, OpeningId id, Task task) {
        return book.opening(id)
                .filter(opening -> JobBook.needs(opening).contains(task))
                .isPresent();
    }

    /** Where the visit goes, there it is published and pinned in the end: its former pin does not count, nor is it a change. */
    private JobFolder heldBy(Visit at) {
        return folder.withPublished(folder.published().stream()
                .map(one -> TaskKey.of(one.visit()).equals(TaskKey.of(at)) ? new PublishedVisit(at, false) : one)
                .toList());
    }

    private Visit moved(CrewId crew, Instant start) {
        Opening opening = book.opened(visit.opening());
        int minutes = new WorkMinutes(folder.labour().rows()).of(opening, visit.task());
        return new Visit(
                crew,
                start.atZone(MovedPlan.zoneOf(book, crew)).toLocalDate(),
                visit.sequence(),
                opening.facade(),
                opening.level(),
                visit.opening(),
                visit.task(),
                start,
                start.plus(Duration.ofMinutes(minutes)));
    }
}
