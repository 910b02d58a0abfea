package drylap.api;

import drylap.handoff.HandoffRequest;
import drylap.handoff.Releases;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Openings, one by one or a course at once, are handed to the trade that follows. */
@RestController
@RequestMapping("/api/releases")
final class ReleasesController {
    private final Releases releases;
    private final OpeningStates states;
    private final SignedIn signedIn;

    ReleasesController(Releases releases, OpeningStates states, SignedIn signedIn) {
        this.releases = releases;
        this.states = states;
        this.signedIn = signedIn;
    }

    /**
     * Whether an opening may be released.
     *
     * @param against what speaks against it; empty: nothing does
     * @param course once nothing does: the openings of its course that are not released, itself among them
     */
    record Offer(long version, List<String> against, List<One> course) {}

    record One(String opening, long version, List<String> against) {}

    @GetMapping("/{folder}/{opening}")
    ResponseEntity<Offer> offer(@PathVariable String folder, @PathVariable String opening) {
        if (!folder.matches("\\d{1,18}") || opening.isBlank()) throw new NotFound();
        try {
            var offer = offer(signedIn.person(), new FolderId(Long.parseLong(folder)), new OpeningId(opening));
            return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(offer);
        } catch (NotAllowed refusal) {
            throw new NotFound();
        }
    }

    private Offer offer(Person who, FolderId folder, OpeningId opening) {
        var state = states.of(who, folder, opening);
        who.demand(Operation.RELEASE, state.site());
        var say = new Speech(who.reading());
        var against = said(say, releases.against(who, folder, opening));
        return new Offer(state.version(), against, against.isEmpty() ? course(who, say, state) : List.of());
    }

    private List<One> course(Person who, Speech say, OpeningState state) {
        var here = state.opening();
        return states.of(who, state.folder()).stream()
                .filter(one -> one.opening().facade().equals(here.facade())
                        && one.opening().level() == here.level()
                        && !one.released())
                .map(one -> new One(
                        one.opening().id().value(),
                        one.version(),
                        said(
                                say,
                                releases.against(
                                        who, state.folder(), one.opening().id()))))
                .toList();
    }

    private static List<String> said(Speech say, List<Saying> against) {
        return against.stream().map(say::it).toList();
    }

    /** All of them or none; what was sent before is answered as {@code already}. */
    @PostMapping
    ReleaseAnswer release(@RequestBody JsonNode body) {
        var who = signedIn.person();
        HandoffRequest request = ReleaseBody.read(body);
        try {
            return ReleaseAnswer.of(releases.release(who, request), new Speech(who.reading()));
        } catch (IllegalArgumentException twoSites) {
            throw new BadFields(List.of(new BadField("release.openings", String.valueOf(twoSites.getMessage()))));
        }
    }
}
