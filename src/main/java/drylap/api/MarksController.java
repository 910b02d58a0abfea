package drylap.api;

import drylap.progress.StepLog;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.List;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Takes the marks that devices made, connected or not. */
@RestController
@RequestMapping("/api/marks")
final class MarksController {
    private final StepLog log;
    private final SignedIn signedIn;

    MarksController(StepLog log, SignedIn signedIn) {
        this.log = log;
        this.signedIn = signedIn;
    }

    /** In the order given, each for itself; what was sent before is answered as {@code already}. */
    @PostMapping
    List<MarkAnswer> mark(@RequestBody JsonNode body) {
        var who = signedIn.person();
        var requests = MarkBatch.read(body);
        var results = log.markAll(who, requests);
        var say = new Speech(who.reading());
        List<MarkAnswer> answers = new ArrayList<>(requests.size());
        for (int i = 0; i < requests.size(); i++) answers.add(MarkAnswer.of(requests.get(i), results.get(i), say));
        return answers;
    }
}
