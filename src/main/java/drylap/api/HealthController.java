package drylap.api;

import drylap.platform.NodeHealth;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** For service managers and balancers, without a sign-in: it says nothing of what is in the database. */
@RestController
@RequestMapping("/health")
final class HealthController {
    private final NodeHealth health;

    HealthController(NodeHealth health) {
        this.health = health;
    }

    /** Only a node that is to be started anew does not answer this; it asks nobody else. */
    @GetMapping("/live")
    ResponseEntity<String> live() {
        return answer(HttpStatus.OK, "alive");
    }

    /** 503 while the node should be sent nothing: starting, stopping, or without its database. */
    @GetMapping("/ready")
    ResponseEntity<String> ready() {
        var readiness = health.readiness();
        return answer(readiness.ready() ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE, readiness.words());
    }

    private static ResponseEntity<String> answer(HttpStatus status, String words) {
        return ResponseEntity.status(status)
                .contentType(MediaType.TEXT_PLAIN)
                .cacheControl(CacheControl.noStore())
                .body(words + "\n");
    }
}
