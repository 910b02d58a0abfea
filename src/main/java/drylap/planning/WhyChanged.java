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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what forced a visit of the published plan from its place, as far as facts tell; the planner's taste is no why. */
final class WhyChanged {
    private final Plan proposal;
    private final Map<OpeningId, Opening> openings;
    private final Set<Visit> pinned;
    private final Map<CrewId, List<Shift>> shifts;
    private final Map<Wall, List<OpenWindow>> open;
    private final Map<Work, String> leftOut;

    private record Wall(FacadeId facade, Task task) {}

    private record Work(OpeningId opening, Task task) {}

    /** Everything by its key: a season's plan has thousands of visits. */
    WhyChanged(JobFolder folder, Plan proposal) {
        this.proposal = proposal;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, opening -> opening));
        pinned = folder.published().stream()
                .filter(PublishedVisit::pinned)
                .map(PublishedVisit::visit)
                .collect(Collectors.toSet());
        shifts = folder.shifts().stream().collect(Collectors.groupingBy(Shift::crew));
        open = proposal.openHours().stream()
                .collect(Collectors.groupingBy(hours -> new Wall(hours.facade(), hours.task())));
        leftOut = proposal.unplanned().stream()
                .collect(Collectors.toMap(left -> new Work(left.opening(), left.task()), UnplannedTask::detail));
    }

    PlanChange explain(PlanChange change) {
        Visit before = Objects.requireNonNull(change.before());
        List<Why> why = new ArrayList<>();
        if (change.kind() == Kind.SAME) {
            if (pinned.contains(before)) why.add(new Why(Reason.PINNED, ""));
        } else if (done(before)) why.add(new Why(Reason.DONE, ""));
        else forced(before, why);
        return new PlanChange(before, change.after(), why);
    }

    private void forced(Visit before, List<Why> why) {
        if (before.start().isBefore(proposal.start())) why.add(new Why(Reason.TIME_PASSED, ""));
        else if (shut(before)) why.add(new Why(Reason.SHUT, ""));
        if (!works(before)) why.add(new Why(Reason.NO_SHIFT, ""));
        Opening opening = openings.get(before.opening());
        if (opening != null && before.task() == Task.INSTALL && before.date().isBefore(opening.deliveredOn()))
            why.add(new Why(Reason.DELIVERY, opening.deliveredOn().toString()));
        String left = leftOut.get(new Work(before.opening(), before.task()));
        if (left != null) why.add(new Why(Reason.LEFT_OUT, left));
    }

    private boolean done(Visit before) {
        Opening opening = openings.get(before.opening());
        return opening != null && !opening.tasks().contains(before.task());
    }

    /** Hours outside the proposal's own span are not known to be shut. */
    private boolean shut(Visit before) {
        if (before.end().isAfter(proposal.horizonEnd())) return false;
        return open.getOrDefault(new Wall(before.facade(), before.task()), List.of()).stream()
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
