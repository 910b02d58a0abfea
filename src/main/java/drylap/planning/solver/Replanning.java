package drylap.planning.solver;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Plans again from the plan at hand: it is what people have, and what begins before now stays. */
final class Replanning {
    /** Small, since many are tried; a number of moves, not seconds, so that an answer can be had again. */
    private static final long MOVES = 2000;

    private static final long SEED = 1;

    private record Key(OpeningId opening, Task task) {
        static Key of(Visit visit) {
            return new Key(visit.opening(), visit.task());
        }
    }

    private record Day(CrewId crew, LocalDate date) {}

    private final Plan plan;
    private final Instant from;
    private final Set<Key> pinned = new HashSet<>();

    Replanning(JobFolder folder, Plan plan, @Nullable Instant now) {
        this.plan = plan;
        from = now == null || now.isBefore(plan.start()) ? plan.start() : now;
        folder.published().stream().filter(PublishedVisit::pinned).forEach(one -> pinned.add(Key.of(one.visit())));
    }

    /** What the plan at hand costs from the moment that is asked from. */
    Ledger ledger(JobFolder folder) {
        if (from.equals(plan.start()) && allToDo(folder)) return plan.ledger();
        Set<Day> shifts = shifts(folder);
        JobFolder held = folder.withPublished(plan.visits().stream()
                .map(one -> new PublishedVisit(one, shifts.contains(new Day(one.crew(), one.date()))))
                .toList());
        return plan(held, 0).ledger();
    }

    /** What is done by now costs nothing more. */
    private boolean allToDo(JobFolder folder) {
        Set<Key> toDo = new HashSet<>();
        folder.openings().forEach(one -> one.tasks().forEach(task -> toDo.add(new Key(one.id(), task))));
        return plan.visits().stream().allMatch(one -> toDo.contains(Key.of(one)));
    }

    private static Set<Day> shifts(JobFolder folder) {
        Set<Day> shifts = new HashSet<>();
        folder.shifts().forEach(shift -> shifts.add(new Day(shift.crew(), shift.date())));
        return shifts;
    }

    Instant from() {
        return from;
    }

    /** The folder in which people have the plan at hand; one visit may be held elsewhere. */
    JobFolder standing(JobFolder folder, @Nullable Visit held) {
        Set<Day> shifts = shifts(folder);
        Stream<PublishedVisit> rest = plan.visits().stream()
                .filter(one -> held == null || !Key.of(one).equals(Key.of(held)))
                .map(one -> new PublishedVisit(
                        one,
                        shifts.contains(new Day(one.crew(), one.date()))
                                && (pinned.contains(Key.of(one)) || one.start().isBefore(from))));
        return folder.withPublished(Stream.concat(
                        rest, Stream.ofNullable(held).map(one -> new PublishedVisit(one, true)))
                .toList());
    }

    /** The plan at hand as it is compiled for questions about one visit: that one is not pinned. */
    JobFolder without(JobFolder folder, Visit asked) {
        return folder.withPublished(standing(folder, null).published().stream()
                .map(one -> Key.of(one.visit()).equals(Key.of(asked)) ? new PublishedVisit(one.visit(), false) : one)
                .toList());
    }

    Plan decode(JobFolder folder, @Nullable Visit held) {
        return plan(standing(folder, held), 0);
    }

    Plan solve(JobFolder folder, @Nullable Visit held) {
        return plan(standing(folder, held), MOVES);
    }

    private Plan plan(JobFolder folder, long moves) {
        return Planner.standard().plan(folder, new PlanRequest(from, null, moves, SEED), _ -> {}, () -> false);
    }

    static boolean plans(Plan plan, OpeningId opening, Task task) {
        return plan.visits().stream().anyMatch(one -> one.opening().equals(opening) && one.task() == task);
    }
}
