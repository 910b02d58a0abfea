package drylap.ui.followon;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.crews.Crews;
import drylap.handoff.Custodies;
import drylap.handoff.HandoffResult;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.kernel.Reading;
import drylap.kernel.Trade;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.platform.News;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Facades;
import drylap.sites.Sites;
import drylap.speech.Speech;
import drylap.ui.drawn.ApronFacts;
import drylap.ui.drawn.ApronPresenter;
import drylap.ui.drawn.Aprons;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import drylap.ui.drawn.MarksSaid;
import drylap.ui.shell.Shared;
import drylap.ui.shell.Sight;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
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
    private final Shared<ApronFacts> shared;
    /** By the facts themselves, and for as long as any page shows them. */
    private final Cache<ApronFacts, Map<Sight, Aprons>> sheets =
            Caffeine.newBuilder().weakKeys().build();

    AcceptanceDesk(
            Publications publications,
            Plans plans,
            Places places,
            OpeningStates states,
            Custodies custodies,
            Takeovers takeovers,
            StepLog log,
            Clock clock,
            News news) {
        this.publications = publications;
        this.plans = plans;
        this.places = places;
        this.states = states;
        this.custodies = custodies;
        this.takeovers = takeovers;
        this.log = log;
        this.clock = clock;
        shared = new Shared<>(news, (shown, fetched) -> shown.equals(fetched) ? shown : fetched);
    }

    /** Where the work is, and whose. */
    @Service
    record Places(Sites sites, Facades facades, Crews crews) {}

    /** Empty before any plan was published. */
    Optional<ApronFacts> facts(Person who) {
        who.demand(Operation.SEE_APRONS);
        return publications.inWork().map(folder -> shared.own(Sight.of(who, folder), () -> facts(who, folder)));
    }

    /** The same after news, once for all pages that are told of them. */
    Optional<ApronFacts> toldFacts(Person who) {
        who.demand(Operation.SEE_APRONS);
        return publications.inWork().map(folder -> shared.told(Sight.of(who, folder), () -> facts(who, folder)));
    }

    /** As this person sees them; drawn once for all who see the same. */
    Aprons aprons(ApronFacts facts, Person who) {
        return sheets.get(facts, _ -> new ConcurrentHashMap<>())
                .computeIfAbsent(
                        Sight.of(who, new Reader(who.reading(), facts.trade(who.crew()))),
                        _ -> ApronPresenter.aprons(facts, who));
    }

    private record Reader(Reading reading, Optional<Trade> trade) {}

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
