package drylap.moving;

import drylap.kernel.Reach;
import drylap.planning.Bound;
import drylap.planning.BoundKind;
import drylap.planning.CurrentFolders;
import drylap.planning.Explainer;
import drylap.planning.JobFolder;
import drylap.planning.MoveCost;
import drylap.planning.Plans;
import drylap.planning.Remedy;
import drylap.planning.WhyThere;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Openings;
import drylap.speech.Saying;
import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Explains visits to those who may move them; it takes seconds, and nothing is saved by it. */
@Service
public final class VisitReasons {
    /** Rules that name another stop of the crew, which may be at a site that the person does not see. */
    private static final Set<BoundKind> OF_OTHER_STOPS =
            EnumSet.of(BoundKind.STOP_BEFORE, BoundKind.PINNED_BEFORE, BoundKind.PINNED_BEHIND);

    private final CurrentFolders folders;
    private final Openings openings;
    private final Plans plans;
    private final Clock clock;
    private final Explainer explainer = Explainer.standard();

    VisitReasons(CurrentFolders folders, Openings openings, Plans plans, Clock clock) {
        this.folders = folders;
        this.openings = openings;
        this.plans = plans;
        this.clock = clock;
    }

    /** Nothing where the plan has no such visit, or its task is done by now. */
    public Optional<WhyThere> why(Person who, VisitSeen seen) {
        demand(who, seen);
        return explainer
                .why(folders.load(seen.folder()), plans.load(seen.plan()), seen.opening(), seen.task())
                .map(why -> within(why, who.reach()));
    }

    /** What moves of the visit would cost. */
    public List<MoveCost> moves(Person who, VisitSeen seen) {
        demand(who, seen);
        JobFolder folder = folders.load(seen.folder());
        return explainer.moves(folder, plans.load(seen.plan()), seen.opening(), seen.task(), now(folder));
    }

    /** What would plan a task; nothing where the plan does not leave it out. */
    public Optional<Remedy> remedy(Person who, VisitSeen seen) {
        demand(who, seen);
        JobFolder folder = folders.load(seen.folder());
        return explainer.remedy(folder, plans.load(seen.plan()), seen.opening(), seen.task(), now(folder));
    }

    /** A folder of the past is explained from its plan's start, as it is planned. */
    private @Nullable Instant now(JobFolder folder) {
        Instant now = clock.instant();
        return folder.lastLimit().filter(now::isBefore).isPresent() ? now : null;
    }

    private static WhyThere within(WhyThere why, Reach reach) {
        if (reach.everySite()) return why;
        return new WhyThere(
                why.visit(),
                why.bounds().stream()
                        .map(one -> OF_OTHER_STOPS.contains(one.kind()) ? unnamed(one) : one)
                        .toList());
    }

    private static Bound unnamed(Bound one) {
        Saying words = Saying.of(
                one.kind() == BoundKind.PINNED_BEHIND
                        ? "a pinned visit of the crew stands behind it"
                        : "the crew's stop before, the road and setting up");
        return new Bound(one.kind(), one.at(), one.binds(), words);
    }

    private void demand(Person who, VisitSeen seen) {
        who.demand(Operation.MOVE_VISIT);
        if (openings.find(seen.folder(), seen.opening(), who.reach()).isEmpty())
            throw new NotAllowed(who, Operation.MOVE_VISIT, "at opening " + seen.opening());
    }
}
