package drylap.ui.followon;

import drylap.crews.Crews;
import drylap.handoff.Custodies;
import drylap.handoff.HandoffResult;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Facades;
import drylap.sites.Sites;
import drylap.speech.Speech;
import drylap.ui.drawn.ApronFacts;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import drylap.ui.drawn.MarksSaid;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;

/** What the screen of aprons reads, and what is done there. */
@Service
final class AcceptanceDesk {
    private final Publications publications;
    private final Plans plans;
    private final Places places;
    private final OpeningStates states;
    private final Custodies custodies;
    private final Takeovers takeovers;
    private final StepLog log;
    private final Clock clock;

    AcceptanceDesk(
            Publications publications,
            Plans plans,
            Places places,
            OpeningStates states,
            Custodies custodies,
            Takeovers takeovers,
            StepLog log,
            Clock clock) {
        this.publications = publications;
        this.plans = plans;
        this.places = places;
        this.states = states;
        this.custodies = custodies;
        this.takeovers = takeovers;
        this.log = log;
        this.clock = clock;
    }

    /** Where the work is, and whose. */
    @Service
    record Places(Sites sites, Facades facades, Crews crews) {}

    /** Empty before any plan was published. */
    Optional<ApronFacts> facts(Person who) {
        who.demand(Operation.SEE_APRONS);
        return publications.inWork().map(folder -> facts(who, folder));
    }

    /** Takes over all of them or none. */
    HandoffResult accept(Person who, FolderId folder, Seen seen, UUID key) {
        return takeovers.accept(who, seen.request(folder, key, "", List.of()));
    }

    /** Marks the line at each of its openings where it is open. */
    MarksSaid mark(Person who, FolderId folder, LineToMark line) {
        var now = clock.instant();
        var requests = line.open().stream()
                .map(opening -> MarkRequest.done(UUID.randomUUID(), folder, opening, line.code(), now))
                .toList();
        return MarksSaid.of(new Speech(who.reading()), requests, log.markAll(who, requests));
    }

    private ApronFacts facts(Person who, FolderId folder) {
        return new ApronFacts(
                folder,
                places.sites().of(folder),
                places.facades().of(folder),
                places.crews().of(folder),
                visits(who, folder),
                states.of(who, folder),
                custodies.of(folder, who.reach()));
    }

    private List<Visit> visits(Person who, FolderId folder) {
        return publications
                .latest(folder)
                .map(published -> plans.load(who, published.plan()).plan().visits())
                .orElse(List.of());
    }
}
