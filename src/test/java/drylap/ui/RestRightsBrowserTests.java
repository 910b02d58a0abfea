package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIRequestContext;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.progress.PhotoRequest;
import drylap.progress.Photos;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Instant;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tools.jackson.databind.json.JsonMapper;

/** Who gets what from each address of the REST interface, downloads included, asked with sessions of the real server. */
@PageTest
class RestRightsBrowserTests {
    /** The columns; the last two have the crew's role, at another site only, and nobody's. */
    private static final List<String> WHO = List.of(
            "scheduler", "window crew", "follow-on", "tester", "administrator", "crew elsewhere", "not signed in");

    private static final String AGREED = """
            GET /api/me                                x x x x x x .
            GET /api/day                               x x . x . x .
            GET /api/lap-sections/{variant}            x x x x x x .
            GET /api/openings/{folder}/{opening}       x x x x . . .
            GET /api/rough-openings/{folder}/{opening} x x x x . . .
            GET /api/photos/{id}                       x x x x . . .
            GET /api/photos/{id}/thumbnail             x x x x . . .
            POST /api/photos                           x x x x . . .
            POST /api/marks                            x x . . . . .
            GET /api/releases/{folder}/{opening}       x x . . . . .
            POST /api/releases                         x x . . . . .
            """;

    private static final byte[] PHOTO = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final OpeningId ONE = new OpeningId("QW2-01");
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private Photos photos;

    @Autowired
    private List<RequestMappingHandlerMapping> mappings;

    private FolderId folder = new FolderId(0);
    private final UUID photo = UUID.randomUUID();

    /** Asks one address for one person. */
    private interface Ask extends Function<APIRequestContext, APIResponse> {}

    @Test
    void each_address_answers_those_who_may_and_nobody_else() {
        publish();
        var asks = asks();
        Map<String, StringBuilder> found = new LinkedHashMap<>();
        AGREED.lines().map(RestRightsBrowserTests::address).forEach(one -> found.put(one, new StringBuilder()));
        for (String who : WHO) {
            Page page = chromium.page(360, 740, ColorScheme.LIGHT);
            var person = person(who);
            if (person != null) SignInPage.at(port).session(page, person);
            var api = page.context().request();
            found.forEach((address, answers) -> answers.append(
                    answered(Objects.requireNonNull(asks.get(address)).apply(api)) ? " x" : " ."));
            page.close();
        }
        assertThat(found.entrySet().stream()
                        .map(one -> "%-42s%s".formatted(one.getKey(), one.getValue()))
                        .toList())
                .isEqualTo(AGREED.lines().toList());
    }

    @Test
    void the_agreement_names_every_address() {
        var all = mappings.stream()
                .flatMap(mapping -> mapping.getHandlerMethods().keySet().stream())
                .map(RequestMappingInfo::toString)
                // the addresses of other programs are asked with tokens, in drylap.api.v1
                .filter(words -> words.contains("/api/") && !words.contains("/api/v1/"))
                .map(words -> words.replaceAll("[{]([A-Z]+) \\[(.+?)\\].*", "$1 $2"))
                .toList();
        assertThat(AGREED.lines().map(RestRightsBrowserTests::address)).containsExactlyInAnyOrderElementsOf(all);
    }

    private static String address(String line) {
        return line.substring(0, 43).strip();
    }

    /** A mark is answered in the list of marks; a mark that was made before counts as made. */
    private static boolean answered(APIResponse response) {
        return response.ok() && !response.text().contains("\"outcome\":\"refused\"");
    }

    private Map<String, Ask> asks() {
        Map<String, Ask> asks = new HashMap<>(Map.of(
                "GET /api/me",
                get("me"),
                "GET /api/day",
                get("day"),
                "GET /api/lap-sections/{variant}",
                get("lap-sections/" + variant()),
                "GET /api/openings/{folder}/{opening}",
                get("openings/%d/%s".formatted(folder.value(), ONE)),
                "GET /api/photos/{id}",
                get("photos/" + photo),
                "GET /api/photos/{id}/thumbnail",
                get("photos/%s/thumbnail".formatted(photo)),
                "POST /api/photos",
                api -> api.post(
                        at("photos"),
                        RequestOptions.create()
                                .setHeader("X-XSRF-TOKEN", token(api))
                                .setMultipart(FormData.create()
                                        .set("key", UUID.randomUUID().toString())
                                        .set("folder", String.valueOf(folder.value()))
                                        .set("opening", ONE.value())
                                        .set("takenAt", "2026-04-13T19:00:00Z")
                                        .set("file", new FilePayload("wall.png", "image/png", PHOTO)))),
                "GET /api/releases/{folder}/{opening}",
                get("releases/%d/%s".formatted(folder.value(), ONE)),
                "POST /api/releases",
                api -> api.post(
                        at("releases"),
                        RequestOptions.create()
                                .setHeader("X-XSRF-TOKEN", token(api))
                                .setHeader("Content-Type", "application/json")
                                .setData(Map.of(
                                        "key",
                                        UUID.randomUUID().toString(),
                                        "folder",
                                        folder.value(),
                                        "openings",
                                        List.of(Map.of("opening", ONE.value(), "version", 0))))),
                "POST /api/marks",
                api -> api.post(
                        at("marks"),
                        RequestOptions.create()
                                .setHeader("X-XSRF-TOKEN", token(api))
                                .setHeader("Content-Type", "application/json")
                                .setData(List.of(Map.of(
                                        "key",
                                        UUID.randomUUID().toString(),
                                        "folder",
                                        folder.value(),
                                        "opening",
                                        ONE.value(),
                                        "line",
                                        "RO",
                                        "kind",
                                        "done",
                                        "markedAt",
                                        "2026-04-13T19:00:00Z"))))));
        asks.put(
                "GET /api/rough-openings/{folder}/{opening}",
                get("rough-openings/%d/%s".formatted(folder.value(), ONE)));
        return asks;
    }

    private Ask get(String path) {
        return api -> api.get(at(path));
    }

    private String at(String path) {
        return "http://localhost:%d/api/%s".formatted(port, path);
    }

    private String token(APIRequestContext api) {
        var me = api.get(at("me"));
        return me.ok() ? JSON.readTree(me.body()).path("token").asString() : "none";
    }

    private String variant() {
        return JSON.readTree(signedIn()
                        .get(at("openings/%d/%s".formatted(folder.value(), ONE)))
                        .body())
                .path("variant")
                .asString();
    }

    private APIRequestContext signedIn() {
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        SignInPage.at(port).session(page, people.scheduler());
        return page.context().request();
    }

    private @Nullable Person person(String who) {
        var elsewhere = Reach.of(Set.of(new SiteId("M")));
        return switch (who) {
            case "scheduler" -> people.scheduler();
            case "window crew" -> people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
            case "follow-on" -> people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1");
            case "tester" -> people.add(Role.TESTER, Reach.EVERYWHERE, "W1");
            case "administrator" -> people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null);
            case "crew elsewhere" -> people.add(Role.WINDOW_CREW, elsewhere, "W1");
            default -> null;
        };
    }

    private void publish() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publishSample(folder, plans.save(folder, plan));
        photos.add(
                people.scheduler(), new PhotoRequest(photo, folder, ONE, Instant.parse("2026-04-13T19:00:00Z"), PHOTO));
    }
}
