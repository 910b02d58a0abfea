package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.sites.Openings;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;

/** How the openings of a job folder stand now. */
@Service
public final class OpeningStates {
    private final Openings openings;
    private final Marks marks;
    private final RulesOfSite rules;
    private final Clock clock;
    private final Replay.Judge judge = new Replay.Judge();

    OpeningStates(Openings openings, Marks marks, RulesOfSite rules, Clock clock) {
        this.openings = openings;
        this.marks = marks;
        this.rules = rules;
        this.clock = clock;
    }

    /** Those at the person's sites, in the folder's order. */
    public List<OpeningState> of(Person who, FolderId folder) {
        who.demand(Operation.SEE_OPENINGS);
        return within(folder, who.reach());
    }

    /** @throws NotAllowed where the opening is not the person's to see, or is not there: which of the two is not told */
    public OpeningState of(Person who, FolderId folder, OpeningId opening) {
        return state(folder, openingFor(who, folder, opening));
    }

    /**
     * As the opening stood once an entry of its log was written, whatever came later.
     *
     * @param version that entry's number; 0: before any entry
     * @throws NotAllowed as {@link #of(Person, FolderId, OpeningId)}
     */
    public OpeningState asOf(Person who, FolderId folder, OpeningId opening, long version) {
        var found = openingFor(who, folder, opening);
        return replay(
                folder,
                found,
                marks.of(folder, opening).stream()
                        .filter(mark -> mark.id() <= version)
                        .toList());
    }

    /** All of the folder, for background work that acts for nobody. */
    public List<OpeningState> states(FolderId folder) {
        return within(folder, Reach.EVERYWHERE);
    }

    Opening openingFor(Person who, FolderId folder, OpeningId opening) {
        who.demand(Operation.SEE_OPENINGS);
        return openings.find(folder, opening, who.reach())
                .orElseThrow(() -> new NotAllowed(who, Operation.SEE_OPENINGS, "at opening " + opening));
    }

    OpeningState state(FolderId folder, Opening opening) {
        return replay(folder, opening, marks.of(folder, opening.id()));
    }

    private OpeningState replay(FolderId folder, Opening opening, List<Mark> log) {
        return new Replay(folder, clock.instant(), judge)
                .of(opening, log, rules.of(folder, opening.facade().site()));
    }

    private List<OpeningState> within(FolderId folder, Reach reach) {
        var replay = new Replay(folder, clock.instant(), judge);
        var ofOpening = marks.of(folder, reach);
        RuleBook book = rules.of(folder);
        Map<SiteId, Rules> ofSite = new HashMap<>();
        return openings.within(folder, reach).stream()
                .map(opening -> replay.of(
                        opening,
                        ofOpening.getOrDefault(opening.id(), List.of()),
                        ofSite.computeIfAbsent(opening.facade().site(), book::at)))
                .toList();
    }
}
