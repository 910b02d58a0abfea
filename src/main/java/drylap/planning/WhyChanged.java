package drylap.planning;

import drylap.crews.Shift;
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
import java.util.stream.Collectors;

/** Finds what forced a visit of the published plan from its place, as far as facts tell; the planner's taste is no why. */
final class WhyChanged {
    private final JobFolder folder;
    private final Plan proposal;
    private final Map<OpeningId, Opening> openings;

    WhyChanged(JobFolder folder, Plan proposal) {
        this.folder = folder;
        this.proposal = proposal;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, opening -> opening));
    }

    PlanChange explain(PlanChange change) {
        Visit before = Objects.requireNonNull(change.before());
        List<Why> why = new ArrayList<>();
        if (change.kind() == Kind.SAME) {
            if (pinned(before)) why.add(new Why(Reason.PINNED, ""));
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
        for (UnplannedTask left : proposal.unplanned())
            if (left.opening().equals(before.opening()) && left.task() == before.task())
                why.add(new Why(Reason.LEFT_OUT, left.detail()));
    }

    private boolean done(Visit before) {
        Opening opening = openings.get(before.opening());
        return opening != null && !opening.tasks().contains(before.task());
    }

    private boolean pinned(Visit before) {
        return folder.published().stream()
                .anyMatch(held -> held.pinned() && held.visit().equals(before));
    }

    /** Hours outside the proposal's own span are not known to be shut. */
    private boolean shut(Visit before) {
        if (before.end().isAfter(proposal.horizonEnd())) return false;
        return proposal.openHours().stream()
                .filter(open -> open.facade().equals(before.facade()) && open.task() == before.task())
                .noneMatch(open -> !before.start().isBefore(open.when().from())
                        && !before.end().isAfter(open.when().until()));
    }

    private boolean works(Visit before) {
        return folder.shifts().stream().anyMatch(shift -> holds(shift, before));
    }

    private static boolean holds(Shift shift, Visit visit) {
        return shift.crew().equals(visit.crew())
                && !visit.start().isBefore(shift.startsAt())
                && !visit.end().isAfter(shift.limit());
    }
}
