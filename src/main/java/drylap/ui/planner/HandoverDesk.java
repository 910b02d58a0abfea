package drylap.ui.planner;

import drylap.handoff.Custodies;
import drylap.handoff.HandoffRecords;
import drylap.handoff.HandoffResult;
import drylap.handoff.HoldPoint;
import drylap.handoff.Inspections;
import drylap.handoff.Releases;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.OpeningStates;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.sites.Sites;
import drylap.speech.Speech;
import drylap.ui.drawn.Aprons.Seen;
import drylap.ui.drawn.HandoverSheet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;

/** What a scheduler sees and does about handing an opening over. */
@Service
final class HandoverDesk {
    private final OpeningStates states;
    private final Custodies custodies;
    private final Releases releases;
    private final Inspections inspections;
    private final HandoffRecords records;
    private final Sites sites;

    HandoverDesk(
            OpeningStates states,
            Custodies custodies,
            Releases releases,
            Inspections inspections,
            HandoffRecords records,
            Sites sites) {
        this.states = states;
        this.custodies = custodies;
        this.releases = releases;
        this.inspections = inspections;
        this.records = records;
        this.sites = sites;
    }

    /** Empty where the opening is not the person's to see. */
    Optional<HandoverSheet> sheet(Person who, FolderId folder, OpeningId opening) {
        try {
            var say = new Speech(who.reading());
            var state = states.of(who, folder, opening);
            var site = sites.of(folder).stream()
                    .filter(one -> one.id().equals(state.site()))
                    .findFirst();
            return site.map(where -> HandoverSheet.of(
                    say,
                    state,
                    custodies.of(folder, opening),
                    where,
                    releases.against(who, folder, opening).stream().map(say::it).toList(),
                    releases.holdPoints(who, folder, opening),
                    records.of(who, folder, opening)));
        } catch (NotAllowed notTheirs) {
            return Optional.empty();
        }
    }

    HandoffResult release(Person who, FolderId folder, Seen seen, UUID key) {
        return releases.release(who, seen.request(folder, key, "", List.of()));
    }

    HandoffResult pass(Person who, FolderId folder, Seen seen, UUID key, HoldPoint point) {
        return inspections.decide(who, seen.request(folder, key, "", List.of()), point, true);
    }
}
