package drylap.planning;

import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.PlanChange.Kind;
import drylap.planning.PlanChange.Reason;
import drylap.planning.PlanChange.Why;
import drylap.sites.Opening;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what moved a visit of the published plan from its place, as far as facts tell; the planner's taste is no why. */
final class WhyChanged {
    private final Plan proposal;
    private final Map<OpeningId, Opening> openings;
    private final Set<Visit> pinned;
    private final Map<CrewId, List<Shift>> shifts;
    private final Map<Wall, List<OpenWindow>> open;
    private final Map<Work, String> leftOut;
    private final Map<Work, Visit> planned;
    private final Map<CrewId, List<Visit>> rounds;
    private final Set<Work> leftOutBefore;
    private final Set<OpeningId> returned;
    private final WhyShut shutters;

    private record Wall(FacadeId facade, Task task) {}

    private record Work(OpeningId opening, Task task) {
        static Work of(Visit visit) {
            return new Work(visit.opening(), visit.task());
        }

        static Work of(UnplannedTask left) {
            return new Work(left.opening(), left.task());
        }
    }

    /** Everything by its key: a season's plan has thousands of visits. */
    WhyChanged(JobFolder folder, Plan published, Plan proposal) {
        this.proposal = proposal;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, opening -> opening));
        pinned = folder.published().stream()
                .filter(PublishedVisit::pinned)
                .map(PublishedVisit::visit)
                .collect(Collectors.toSet());
        shifts = folder.shifts().stream().collect(Collectors.groupingBy(Shift::crew));
        open = proposal.openHours().stream()
                .collect(Collectors.groupingBy(hours -> new Wall(hours.facade(), hours.task())));
        leftOut = proposal.unplanned().stream().collect(Collectors.toMap(Work::of, UnplannedTask::detail));
        planned = proposal.visits().stream().collect(Collectors.toMap(Work::of, visit -> visit, (_, last) -> last));
        rounds = proposal.visits().stream().collect(Collectors.groupingBy(Visit::crew));
        leftOutBefore = published.unplanned().stream().map(Work::of).collect(Collectors.toSet());
        returned = returned(published);
        shutters = new WhyShut(folder, proposal.start(), proposal.horizonEnd());
    }

    /** Openings with work that the published plan knew nothing of: it was done, and has come back. */
    private Set<OpeningId> returned(Plan published) {
        Set<Work> known = published.visits().stream().map(Work::of).collect(Collectors.toSet());
        known.addAll(leftOutBefore);
        return Stream.concat(planned.keySet().stream(), leftOut.keySet().stream())
                .filter(work -> !known.contains(work))
                .map(Work::opening)
                .collect(Collectors.toSet());
    }

    /** A visit that the published plan does not have. */
    PlanChange added(Visit after) {
        Reason reason = leftOutBefore.contains(Work.of(after)) ? Reason.PLACED : Reason.RETURNED;
        return new PlanChange(null, after, List.of(new Why(reason)));
    }

    PlanChange explain(PlanChange change) {
        Visit before = Objects.requireNonNull(change.before());
        List<Why> why = new ArrayList<>();
        if (change.kind() == Kind.SAME) {
            if (pinned.contains(before)) why.add(new Why(Reason.PINNED));
        } else if (done(before)) why.add(new Why(Reason.DONE));
        else {
            forced(before, why);
            if (why.isEmpty()) pushed(before).ifPresent(why::add);
        }
        return new PlanChange(before, change.after(), why);
    }

    private void forced(Visit before, List<Why> why) {
        if (before.start().isBefore(proposal.start())) why.add(new Why(Reason.TIME_PASSED));
        else if (shut(before))
            why.add(new Why(
                    Reason.SHUT,
                    shutters.saying(
                                    before,
                                    open(before).stream().map(OpenWindow::when).toList())
                            .orElse(null)));
        if (!works(before)) why.add(new Why(Reason.NO_SHIFT, absence(before)));
        Opening opening = openings.get(before.opening());
        if (opening != null && before.task() == Task.INSTALL && before.date().isBefore(opening.deliveredOn()))
            why.add(new Why(Reason.DELIVERY, Saying.asItIs(new Part.When(opening.deliveredOn()))));
        String left = leftOut.get(new Work(before.opening(), before.task()));
        if (left != null) why.add(new Why(Reason.LEFT_OUT, LeftOut.read(left)));
    }

    /** Its old place is free of hindrance by itself, but other work of the proposal is in its way. */
    private Optional<Why> pushed(Visit before) {
        if (returned.contains(before.opening())) return Optional.of(new Why(Reason.RETURNED));
        return follows(before).or(() -> room(before));
    }

    private Optional<Why> follows(Visit before) {
        return Stream.of(Task.values())
                .filter(task -> task.compareTo(before.task()) < 0)
                .map(task -> planned.get(new Work(before.opening(), task)))
                .filter(Objects::nonNull)
                .filter(earlier -> earlier.end().isAfter(before.start()))
                .findFirst()
                .map(earlier -> new Why(Reason.FOLLOWS, TaskWords.noun(earlier.task())));
    }

    private Optional<Why> room(Visit before) {
        return rounds.getOrDefault(before.crew(), List.of()).stream()
                .filter(other -> !Work.of(other).equals(Work.of(before)))
                .filter(other ->
                        other.start().isBefore(before.end()) && before.start().isBefore(other.end()))
                .findFirst()
                .map(other -> new Why(Reason.ROOM, TaskWords.at(other.task(), other.opening())));
    }

    private Saying absence(Visit before) {
        boolean comes = shifts.getOrDefault(before.crew(), List.of()).stream()
                .anyMatch(shift -> shift.date().equals(before.date()));
        return Saying.of(
                comes ? "crew {0} has other hours on {1}" : "crew {0} does not come on {1}",
                before.crew(),
                new Part.When(before.date()));
    }

    private List<OpenWindow> open(Visit visit) {
        return open.getOrDefault(new Wall(visit.facade(), visit.task()), List.of());
    }

    private boolean done(Visit before) {
        Opening opening = openings.get(before.opening());
        return opening != null && !opening.tasks().contains(before.task());
    }

    /** Hours outside the proposal's own span are not known to be shut. */
    private boolean shut(Visit before) {
        if (before.end().isAfter(proposal.horizonEnd())) return false;
        return open(before).stream()
                .noneMatch(hours -> !before.start().isBefore(hours.when().from())
                        && !before.end().isAfter(hours.when().until()));
    }

    private boolean works(Visit before) {
        return shifts.getOrDefault(before.crew(), List.of()).stream().anyMatch(shift -> holds(shift, before));
    }

    private static boolean holds(Shift shift, Visit visit) {
        return !visit.start().isBefore(shift.startsAt()) && !visit.end().isAfter(shift.limit());
    }
}
