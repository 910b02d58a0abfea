package drylap.api;

import drylap.kernel.FolderId;
import drylap.planning.Plans;
import drylap.planning.Publication;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import java.time.Clock;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Where someone's crew goes by the published plan today and tomorrow, so that a phone can take those openings along. */
@RestController
final class DayController {
    private static final Duration BACK = Duration.ofHours(14);
    private static final Duration AHEAD = Duration.ofHours(38);

    private final Publications publications;
    private final Plans plans;
    private final SignedIn signedIn;
    private final Clock clock;

    DayController(Publications publications, Plans plans, SignedIn signedIn, Clock clock) {
        this.publications = publications;
        this.plans = plans;
        this.signedIn = signedIn;
        this.clock = clock;
    }

    record Stop(long folder, String opening, String words) {}

    @GetMapping("/api/day")
    ResponseEntity<List<Stop>> day() {
        var who = signedIn.person();
        if (!who.may(Operation.SEE_CREW_DAY)) throw new NotFound();
        var stops = publications
                .inWork()
                .flatMap(publications::latest)
                .map(published -> stops(who, published))
                .orElse(List.of());
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(stops);
    }

    private List<Stop> stops(Person who, Publication published) {
        var from = clock.instant().minus(BACK);
        var until = clock.instant().plus(AHEAD);
        return plans.load(who, published.plan()).plan().visits().stream()
                .filter(visit -> visit.crew().equals(who.crew()))
                .filter(visit -> visit.end().isAfter(from) && visit.start().isBefore(until))
                .sorted(Comparator.comparing(Visit::start))
                .map(visit -> stop(new Speech(who.reading()), published.folder(), visit))
                .distinct()
                .toList();
    }

    private static Stop stop(Speech say, FolderId folder, Visit visit) {
        return new Stop(
                folder.value(),
                visit.opening().value(),
                say.it(
                        "{0}: {1}, {2}, level {3}",
                        visit.opening(), visit.facade().site(), visit.facade().facade(), visit.level()));
    }
}
