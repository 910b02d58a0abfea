package drylap.api.v1;

import drylap.api.NotFound;
import drylap.kernel.FolderId;
import drylap.planning.Plans;
import drylap.planning.Publication;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The published plan: of all crews for whoever sees the week sheet, of the own crew for whoever works in one. */
@RestController
final class PlansOfPrograms {
    private final FolderDoor door;
    private final Publications publications;
    private final Plans plans;
    private final SignedIn signedIn;

    PlansOfPrograms(FolderDoor door, Publications publications, Plans plans, SignedIn signedIn) {
        this.door = door;
        this.publications = publications;
        this.plans = plans;
        this.signedIn = signedIn;
    }

    record PublicationAnswer(long publication, long plan, Instant publishedAt, String by) {
        static PublicationAnswer of(Publication one) {
            return new PublicationAnswer(one.id().value(), one.plan().value(), one.at(), one.by());
        }
    }

    /** @param sequence its place in the crew's day, from 1 */
    record VisitAnswer(
            String crew,
            LocalDate date,
            int sequence,
            String site,
            String facade,
            int level,
            String opening,
            String task,
            Instant start,
            Instant end) {
        static VisitAnswer of(Visit visit) {
            return new VisitAnswer(
                    visit.crew().value(),
                    visit.date(),
                    visit.sequence(),
                    visit.facade().site().value(),
                    visit.facade().facade(),
                    visit.level(),
                    visit.opening().value(),
                    visit.task().code(),
                    visit.start(),
                    visit.end());
        }
    }

    @GetMapping("/api/v1/folders/{folder}/publication")
    ResponseEntity<PublicationAnswer> publication(@PathVariable String folder) {
        var who = signedIn.person();
        return Tags.answer(PublicationAnswer.of(latest(who, door.open(who, folder))));
    }

    @GetMapping("/api/v1/folders/{folder}/visits")
    ResponseEntity<Listing<VisitAnswer>> visits(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String crew,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var published = latest(who, door.open(who, folder));
        List<Visit> wanted = plans.load(who, published.plan()).plan().visits().stream()
                .filter(visit ->
                        who.may(Operation.SEE_WEEK_SHEET) || visit.crew().equals(who.crew()))
                .filter(visit -> site == null || visit.facade().site().value().equals(site))
                .filter(visit -> crew == null || visit.crew().value().equals(crew))
                .toList();
        return Part.of(limit, cursor).of(wanted, PlansOfPrograms::key, VisitAnswer::of);
    }

    private static String key(Visit visit) {
        return "%012d|%s|%s|%s"
                .formatted(
                        visit.start().getEpochSecond(),
                        visit.crew(),
                        visit.opening(),
                        visit.task().code());
    }

    private Publication latest(Person who, FolderId folder) {
        if (!who.may(Operation.SEE_WEEK_SHEET) && !who.may(Operation.SEE_CREW_DAY)) throw new NotFound();
        return publications.latest(folder).orElseThrow(NotFound::new);
    }
}
