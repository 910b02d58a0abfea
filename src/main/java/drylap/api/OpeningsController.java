package drylap.api;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.NotAllowed;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** How an opening stands, with its lines and why each may or may not be marked. */
@RestController
@RequestMapping("/api/openings")
final class OpeningsController {
    private final OpeningStates states;
    private final StepLog log;
    private final SignedIn signedIn;

    OpeningsController(OpeningStates states, StepLog log, SignedIn signedIn) {
        this.states = states;
        this.log = log;
        this.signedIn = signedIn;
    }

    @GetMapping("/{folder}/{opening}")
    ResponseEntity<OpeningAnswer> opening(@PathVariable String folder, @PathVariable String opening) {
        if (!folder.matches("\\d{1,18}") || opening.isBlank()) throw new NotFound();
        var who = signedIn.person();
        try {
            var state = states.of(who, new FolderId(Long.parseLong(folder)), new OpeningId(opening));
            return ResponseEntity.ok()
                    .cacheControl(CacheControl.noStore())
                    .body(OpeningAnswer.of(state, line -> log.mayMark(who, state, line), new Speech(who.reading())));
        } catch (NotAllowed refusal) {
            throw new NotFound();
        }
    }
}
