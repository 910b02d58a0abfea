package drylap.moving;

import drylap.audit.MoveJudge;
import drylap.audit.MoveVerdict;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.Pins;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.PlanRuns;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.StoredPlan;
import drylap.planning.Visit;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Openings;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Moves a visit by hand. What breaks a rule is refused; what breaks none is a new plan, with the visit pinned in it. */
@Service
public final class VisitMoves {
    private final CurrentFolders folders;
    private final Openings openings;
    private final Plans plans;
    private final Publications publications;
    private final PlanRuns runs;
    private final Pins pins;
    private final History history;
    private final TransactionTemplate transaction;
    private final Clock clock;

    VisitMoves(
            CurrentFolders folders,
            Openings openings,
            Plans plans,
            Publications publications,
            PlanRuns runs,
            Pins pins,
            History history,
            TransactionTemplate transaction,
            Clock clock) {
        this.folders = folders;
        this.openings = openings;
        this.plans = plans;
        this.publications = publications;
        this.runs = runs;
        this.pins = pins;
        this.history = history;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** Nothing where the plan has no such visit, or its task is done by now. */
    public Optional<VisitTrial> attempt(Person who, VisitSeen seen) {
        demand(who, seen);
        Plan plan = plans.load(seen.plan());
        return judge(seen, plan).map(judge -> new VisitTrial(judge, plan, who.reach()));
    }

    /**
     * Moves the visit, if that breaks no rule and the plan is still the one that was seen.
     *
     * @throws IllegalArgumentException where the start is no whole minute
     */
    public MoveResult move(Person who, VisitSeen seen, CrewId crew, Instant start) {
        SiteId site = demand(who, seen);
        if (!start.equals(start.truncatedTo(ChronoUnit.MINUTES)))
            throw new IllegalArgumentException("a visit starts on a whole minute, not at " + start);
        return transaction.execute(_ -> {
            StoredPlan newest = plans.holdNewest(seen.folder());
            if (!isStill(seen, newest.id())) return new MoveResult.ChangedMeanwhile(newest.madeAt());
            if (runs.underWay(seen.folder())) return new MoveResult.Planning();
            Plan plan = plans.load(seen.plan());
            return judge(seen, plan)
                    .map(judge -> decide(who, seen, site, judge, plan, crew, start))
                    .orElseGet(MoveResult.Done::new);
        });
    }

    private boolean isStill(VisitSeen seen, PlanId newest) {
        return seen.newest().equals(newest)
                && (seen.plan().equals(newest)
                        || publications
                                .latest(seen.folder())
                                .filter(one -> one.plan().equals(seen.plan()))
                                .isPresent());
    }

    private MoveResult decide(
            Person who, VisitSeen seen, SiteId site, MoveJudge judge, Plan plan, CrewId crew, Instant start) {
        MoveVerdict verdict = judge.judge(crew, start);
        if (!verdict.keepsEveryRule()) return new MoveResult.Refused(verdict.within(who.reach(), plan.visits()));
        pins.pin(who, seen.folder(), verdict.is());
        JobFolder now = folders.load(seen.folder());
        PlanId saved = plans.saveMovedByHand(seen.folder(), judge.plan(now, crew, start), now);
        history.note(who, site, words(verdict.was(), verdict.is()));
        return new MoveResult.Moved(saved, verdict.within(who.reach(), plan.visits()));
    }

    private static String words(Visit was, Visit is) {
        return "moved the %s of %s by hand: from crew %s on %s to crew %s on %s"
                .formatted(was.task().code(), was.opening(), was.crew(), was.date(), is.crew(), is.date());
    }

    /** The whole folder and the whole plan are judged: a crew may be at a site that the person does not see. */
    private Optional<MoveJudge> judge(VisitSeen seen, Plan plan) {
        return MoveJudge.of(folders.load(seen.folder()), plan, seen.opening(), seen.task(), clock.instant());
    }

    private SiteId demand(Person who, VisitSeen seen) {
        who.demand(Operation.MOVE_VISIT);
        return openings.find(seen.folder(), seen.opening(), who.reach())
                .map(opening -> opening.facade().site())
                .orElseThrow(() -> new NotAllowed(who, Operation.MOVE_VISIT, "at opening " + seen.opening()));
    }
}
