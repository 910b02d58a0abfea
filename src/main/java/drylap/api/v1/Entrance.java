package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.api.NotFound;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.SignedIn;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** What there is here and for whom: the document of the interface, and whom a token stands for. */
@RestController
final class Entrance {
    private static final String DOCUMENT = "drylap/api/v1.yaml";

    private final Map<String, Object> document;
    private final SignedIn signedIn;

    Entrance(SignedIn signedIn) throws IOException {
        this.signedIn = signedIn;
        try (var file = new ClassPathResource(DOCUMENT).getInputStream()) {
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            document = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
        }
    }

    /**
     * @param sites those that it is narrowed to; none where every one is in reach
     * @param may everything that is allowed somewhere
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Me(
            String name, String role, @Nullable String crew, boolean everySite, List<String> sites, List<String> may) {}

    /** OpenAPI 3.1. */
    @GetMapping("/api/v1/openapi.json")
    ResponseEntity<Map<String, Object>> document() {
        return Tags.answer(document);
    }

    @GetMapping("/api/v1/me")
    ResponseEntity<Me> me() {
        var who = signedIn.person();
        return Tags.answer(new Me(
                who.name(),
                who.role().code(),
                who.crew() == null ? null : who.crew().value(),
                who.reach().everySite(),
                who.reach().sites().stream().map(SiteId::value).sorted().toList(),
                Arrays.stream(Operation.values())
                        .filter(who::may)
                        .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .toList()));
    }

    /** The page would answer what nobody else does; a program is told that there is nothing. */
    @RequestMapping("/api/v1/**")
    ResponseEntity<Void> elsewhere() {
        throw new NotFound();
    }
}
