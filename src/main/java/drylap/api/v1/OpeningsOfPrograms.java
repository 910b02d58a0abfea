package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.handoff.Custodies;
import drylap.handoff.Custody;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.Mark;
import drylap.progress.OpeningStates;
import drylap.progress.WholeLog;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Opening;
import drylap.sites.Openings;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** How openings stand, and the log of each. */
@RestController
final class OpeningsOfPrograms {
    private final FolderDoor folders;
    private final OpeningDoor door;
    private final Openings openings;
    private final OpeningStates states;
    private final Custodies custodies;
    private final WholeLog log;
    private final SignedIn signedIn;

    OpeningsOfPrograms(
            FolderDoor folders,
            OpeningDoor door,
            Openings openings,
            OpeningStates states,
            Custodies custodies,
            WholeLog log,
            SignedIn signedIn) {
        this.folders = folders;
        this.door = door;
        this.openings = openings;
        this.states = states;
        this.custodies = custodies;
        this.log = log;
        this.signedIn = signedIn;
    }

    /** An opening in a list. */
    record OpeningLine(String opening, OpeningAnswerV1.Design design, OpeningAnswerV1.Rating rating, String hands) {}

    /**
     * An entry of the log, which is only added to.
     *
     * @param kind done, or undone by a later entry with its reason
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record MarkLine(
            long mark,
            String line,
            String kind,
            Instant markedAt,
            Instant receivedAt,
            String by,
            @Nullable String crew,
            @Nullable String note,
            @Nullable String reason) {
        static MarkLine of(Mark mark) {
            return new MarkLine(
                    mark.id(),
                    mark.line(),
                    mark.kind().code(),
                    mark.markedAt(),
                    mark.receivedAt(),
                    mark.person(),
                    mark.crew() == null ? null : mark.crew().value(),
                    mark.note(),
                    mark.reason());
        }
    }

    @GetMapping("/api/v1/folders/{folder}/openings")
    ResponseEntity<Listing<OpeningLine>> openings(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var id = folders.open(who, folder);
        Map<OpeningId, Custody> hands = custodies.of(id, who.reach());
        List<Opening> wanted = openings.within(id, who.reach()).stream()
                .filter(one -> site == null || one.facade().site().value().equals(site))
                .toList();
        return Part.of(limit, cursor).of(wanted, one -> one.id().value(), one -> line(who, id, one, hands));
    }

    private OpeningLine line(Person who, FolderId folder, Opening opening, Map<OpeningId, Custody> hands) {
        return new OpeningLine(
                opening.id().value(),
                OpeningAnswerV1.Design.of(opening),
                OpeningAnswerV1.Rating.of(states.of(who, folder, opening.id())),
                OpeningAnswerV1.Hands.of(hands.getOrDefault(opening.id(), new Custody.Unreleased()))
                        .state());
    }

    @GetMapping("/api/v1/folders/{folder}/openings/{opening}")
    ResponseEntity<OpeningAnswerV1> opening(@PathVariable String folder, @PathVariable String opening) {
        return Tags.answer(door.see(signedIn.person(), folder, opening).answer());
    }

    @GetMapping("/api/v1/folders/{folder}/openings/{opening}/marks")
    ResponseEntity<Listing<MarkLine>> marks(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var seen = door.see(who, folder, opening);
        return Part.of(limit, cursor)
                .of(log.of(who, seen.folder(), seen.id()), one -> "%019d".formatted(one.id()), MarkLine::of);
    }
}
