package drylap.api;

import drylap.security.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Who the page's scripts act for, and what they must send with a change. */
@RestController
class MeController {
    record Me(long id, String name, String role, @Nullable String crew, String header, String token, String language) {}

    private final SignedIn signedIn;

    MeController(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @GetMapping("/api/me")
    ResponseEntity<Me> me(CsrfToken token) {
        return signedIn.find()
                .map(who -> ResponseEntity.ok(new Me(
                        who.id().value(),
                        who.name(),
                        who.role().code(),
                        who.crew() == null ? null : who.crew().value(),
                        token.getHeaderName(),
                        token.getToken(),
                        who.reading().language().code())))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.UNAUTHORIZED).build());
    }
}
