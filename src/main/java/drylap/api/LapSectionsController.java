package drylap.api;

import drylap.assembly.LapSection;
import drylap.assembly.Variant;
import drylap.assembly.WorkLine;
import drylap.assembly.WorkList;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** How the laps of a kind of opening look after each of its lines, done in their order; true of every opening of the kind. */
@RestController
final class LapSectionsController {
    private static final Duration KEEP = Duration.ofDays(1);

    private final SignedIn signedIn;

    LapSectionsController(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    /** The drawings by the code of the line. */
    @GetMapping("/api/lap-sections/{variant}")
    ResponseEntity<Map<String, String>> sections(@PathVariable String variant) {
        var say = new Speech(signedIn.reading());
        return VariantName.parse(variant)
                .map(found -> ResponseEntity.ok()
                        .cacheControl(CacheControl.maxAge(KEEP).cachePrivate())
                        .body(drawn(found, say)))
                .orElseThrow(NotFound::new);
    }

    private static Map<String, String> drawn(Variant variant, Speech say) {
        var list = WorkList.of(variant, false);
        Map<String, String> drawn = new LinkedHashMap<>();
        List<String> done = new ArrayList<>();
        while (done.size() < list.lines().size()) {
            WorkLine line = list.lines().stream()
                    .filter(one -> !done.contains(one.code()))
                    .filter(one -> list.missing(done, one).isEmpty())
                    .findFirst()
                    .orElseThrow();
            done.add(line.code());
            drawn.put(line.code(), LapSection.svg(list.built(done), LapSection.Layout.STACKED, say));
        }
        return drawn;
    }
}
