package drylap.api;

import drylap.platform.MetricsText;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;

/** What the node has counted, for whoever shows the token of the metrics, or looks after the machine and is signed in. */
@RestController
final class MetricsController {
    private final MetricsText metrics;
    private final SignedIn signedIn;

    MetricsController(MetricsText metrics, SignedIn signedIn) {
        this.metrics = metrics;
        this.signedIn = signedIn;
    }

    @GetMapping("/metrics")
    ResponseEntity<String> metrics(
            @RequestHeader(name = HttpHeaders.AUTHORIZATION, defaultValue = "") String authorization) {
        if (!metrics.on()) throw new NotFound();
        if (!metrics.opens(authorization) && !mayLook())
            return ResponseEntity.status(HttpStatus.UNAUTHORIZED)
                    .header(HttpHeaders.WWW_AUTHENTICATE, "Bearer")
                    .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, MetricsText.CONTENT_TYPE)
                .cacheControl(CacheControl.noStore())
                .body(metrics.text());
    }

    private boolean mayLook() {
        return signedIn.find()
                .filter(Person::inPerson)
                .filter(who -> who.may(Operation.SEE_MACHINE))
                .isPresent();
    }
}
