package drylap.api.v1;

import drylap.api.BadField;
import drylap.assembly.WorkLine;
import drylap.handoff.HandoffRequest;
import drylap.handoff.HandoffResult;
import drylap.handoff.Releases;
import drylap.handoff.Takeovers;
import drylap.progress.MarkResult;
import drylap.progress.StepLog;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.SignedIn;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** What is done at an opening, and its way from trade to trade. Each is answered by the opening as it stands then. */
@RestController
@RequestMapping("/api/v1/folders/{folder}/openings/{opening}")
final class ChangesOfOpenings {
    private final OpeningDoor door;
    private final StepLog log;
    private final Releases releases;
    private final Takeovers takeovers;
    private final SignedIn signedIn;

    ChangesOfOpenings(OpeningDoor door, StepLog log, Releases releases, Takeovers takeovers, SignedIn signedIn) {
        this.door = door;
        this.log = log;
        this.releases = releases;
        this.takeovers = takeovers;
        this.signedIn = signedIn;
    }

    @PostMapping("/marks")
    ResponseEntity<OpeningAnswerV1> mark(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestBody JsonNode body,
            HttpServletRequest request) {
        var seen = door.hold(signedIn.person(), folder, opening, request);
        switch (log.mark(seen.who(), Bodies.mark(body, seen))) {
            case MarkResult.Marked _ -> {}
            case MarkResult.AlreadyMarked already -> throw already(already);
            case MarkResult.Refused refused -> throw Refused.conflict(refused.words(), first(refused.lines()));
            case MarkResult.NotYours foreign ->
                throw new NotAllowed(seen.who(), Operation.MARK_INSTALL, foreign.words());
        }
        return now(seen);
    }

    @PostMapping("/releases")
    ResponseEntity<OpeningAnswerV1> release(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestBody JsonNode body,
            HttpServletRequest request) {
        var seen = door.hold(signedIn.person(), folder, opening, request);
        return done(seen, releases.release(seen.who(), act(seen, Bodies.note(body, "release"))));
    }

    @PostMapping("/acceptances")
    ResponseEntity<OpeningAnswerV1> accept(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestBody JsonNode body,
            HttpServletRequest request) {
        var seen = door.hold(signedIn.person(), folder, opening, request);
        return done(seen, takeovers.accept(seen.who(), act(seen, Bodies.note(body, "acceptance"))));
    }

    @PostMapping("/returns")
    ResponseEntity<OpeningAnswerV1> giveBack(
            @PathVariable String folder,
            @PathVariable String opening,
            @RequestBody JsonNode body,
            HttpServletRequest request) {
        var seen = door.hold(signedIn.person(), folder, opening, request);
        var asked = Bodies.giveBack(body, seen);
        return done(seen, takeovers.giveBack(seen.who(), act(seen, asked.note()), asked.reason(), asked.redoFrom()));
    }

    private static HandoffRequest act(OpeningDoor.Seen seen, String note) {
        return new HandoffRequest(
                UUID.randomUUID(), seen.folder(), Map.of(seen.id(), seen.state().version()), note, List.of());
    }

    private ResponseEntity<OpeningAnswerV1> done(OpeningDoor.Seen seen, HandoffResult result) {
        return switch (result) {
            case HandoffResult.Done _, HandoffResult.AlreadyDone _ -> now(seen);
            case HandoffResult.NotYet(var hindrances) ->
                throw Refused.conflict(
                        result.words(),
                        hindrances.stream()
                                .map(one -> new BadField(one.opening().value(), one.words()))
                                .toList());
            // it is held, so that nobody was quicker: it is in other hands than this asks for
            case HandoffResult.ChangedMeanwhile _ -> throw Refused.conflict(result.words(), List.of());
        };
    }

    private ResponseEntity<OpeningAnswerV1> now(OpeningDoor.Seen seen) {
        String folder = String.valueOf(seen.folder().value());
        return Tags.answer(door.see(seen.who(), folder, seen.id().value()).answer());
    }

    private static Refused already(MarkResult.AlreadyMarked already) {
        String by = already.by() == null ? "when the job folder was imported" : "by " + already.by();
        return Refused.conflict("it is marked so already, %s".formatted(by), List.of());
    }

    private static List<BadField> first(List<WorkLine> lines) {
        return lines.stream()
                .map(line -> new BadField(line.code(), "comes first: " + line.text()))
                .toList();
    }
}
