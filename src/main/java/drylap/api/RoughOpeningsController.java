package drylap.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.roughopening.RoughMeasurement;
import drylap.roughopening.RoughOpenings;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What the newest measurement of a rough opening comes to. */
@RestController
@RequestMapping("/api/rough-openings")
final class RoughOpeningsController {
    private final RoughOpenings rough;
    private final SignedIn signedIn;

    RoughOpeningsController(RoughOpenings rough, SignedIn signedIn) {
        this.rough = rough;
        this.signedIn = signedIn;
    }

    /**
     * None but the right of the person where it was not measured.
     *
     * @param grade {@code fits}, {@code shim} or {@code report}
     * @param mayMeasure whether the person who asks may record a measurement
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Answer(
            boolean mayMeasure,
            @Nullable String grade,
            @Nullable String words,
            @Nullable String meaning,
            @Nullable String by,
            @Nullable Instant at) {}

    @GetMapping("/{folder}/{opening}")
    ResponseEntity<Answer> newest(@PathVariable String folder, @PathVariable String opening) {
        if (!folder.matches("\\d{1,18}") || opening.isBlank()) throw new NotFound();
        var who = signedIn.person();
        var at = new FolderId(Long.parseLong(folder));
        var id = new OpeningId(opening);
        try {
            boolean may = who.may(
                    Operation.MEASURE_OPENING,
                    rough.opening(who, at, id).facade().site());
            return ResponseEntity.ok()
                    .cacheControl(CacheControl.noStore())
                    .body(answer(new Speech(who.reading()), may, rough.newest(who, at, id)));
        } catch (NotAllowed refusal) {
            throw new NotFound();
        }
    }

    private static Answer answer(Speech say, boolean mayMeasure, Optional<RoughMeasurement> newest) {
        return newest.map(one -> new Answer(
                        mayMeasure,
                        one.verdict().grade().code(),
                        say.it(one.verdict().grade().words()),
                        say.it(one.verdict().grade().meaning()),
                        one.person(),
                        one.at()))
                .orElseGet(() -> new Answer(mayMeasure, null, null, null, null, null));
    }
}
