package drylap.api;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.handoff.Releases;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.Person;
import drylap.security.SignedIn;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A window crew's phone releases over the real services and tables. */
@DbTest
class ReleasesDbTests {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final OpeningId B = WallOfAll.plain(Method.B);
    private static final OpeningId A1 = WallOfAll.plain(Method.A1);

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    Releases releases;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private Person person = WallOfAll.WINDOW;

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
        person = WallOfAll.WINDOW;
    }

    @Test
    void an_opening_is_released_once_however_often_it_is_sent() throws Exception {
        install(B);
        String body = body(B);

        assertThat(outcome(send(body))).isEqualTo("released");
        assertThat(outcome(send(body))).isEqualTo("already");

        assertThat(acts()).isEqualTo(1);
        assertThat(state(B).released()).isTrue();
    }

    @Test
    void what_is_not_ready_is_named_and_nothing_of_the_course_is_released() throws Exception {
        install(B);

        var answer = json(send(body(B, A1)));

        assertThat(answer.path("outcome").stringValue()).isEqualTo("not-yet");
        assertThat(answer.at("/hindrances/0/opening").stringValue()).isEqualTo(A1.value());
        assertThat(answer.at("/hindrances/0/words").stringValue()).contains("still to do");
        assertThat(acts()).isZero();
    }

    @Test
    void whoever_looked_at_an_older_state_changes_nothing() throws Exception {
        install(B);
        String old = body(B);
        log.undo(WallOfAll.SCHEDULER, folder, B, "check", "photo blurred", UUID.randomUUID());

        var answer = json(send(old));

        assertThat(answer.path("outcome").stringValue()).isEqualTo("changed");
        assertThat(answer.path("words").stringValue()).contains("by Scheduler");
        assertThat(acts()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"wrap", "tester", "elsewhere", "administrator"})
    void another_role_or_another_site_may_not(String who) throws Exception {
        install(B);
        String body = body(B);
        person = switch (who) {
            case "wrap" -> WallOfAll.WRAP;
            case "tester" -> WallOfAll.TESTER;
            case "elsewhere" -> WallOfAll.ELSEWHERE;
            default -> WallOfAll.ADMINISTRATOR;
        };

        assertThat(send(body).getStatus()).isEqualTo(403);
        assertThat(offer(B).getStatus()).isEqualTo(404);
        assertThat(acts()).isZero();
    }

    @Test
    void an_opening_says_what_speaks_against_its_release_and_then_which_of_its_course_go_with_it() throws Exception {
        assertThat(json(offer(B)).at("/against/0").stringValue()).contains("still to do");
        assertThat(json(offer(B)).path("course")).isEmpty();

        install(B);

        var offer = json(offer(B));
        assertThat(offer.path("against")).isEmpty();
        assertThat(offer.path("version").longValue()).isEqualTo(state(B).version());
        var course = offer.path("course").valueStream().toList();
        assertThat(course).extracting(one -> one.path("opening").stringValue()).contains(B.value());
        assertThat(course)
                .filteredOn(one -> one.path("against").isEmpty())
                .extracting(one -> one.path("opening").stringValue())
                .containsExactly(B.value());
    }

    @Test
    void openings_of_two_sites_are_a_problem() throws Exception {
        person = WallOfAll.SCHEDULER;

        var response = send(body(B, new OpeningId("south-1")));

        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(json(response).at("/errors/0/problem").stringValue()).contains("of one");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {}                                      | release.key
            {"key":"1"}                             | release.folder
            {"openings":[]}                         | release.openings
            {"openings":[{"opening":"X"}]}          | release.openings[0].version
            {"openings":[{"version":-1}]}           | release.openings[0].opening
            {"openings":[{"opening":"X","version":1},{"opening":"X","version":1}]} | release.openings[1].opening
            7                                       | release
            """)
    void a_bad_field_is_named(String body, String field) throws Exception {
        var response = send(body);

        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(json(response)
                        .path("errors")
                        .valueStream()
                        .map(one -> one.path("field").stringValue()))
                .contains(field);
    }

    private MockHttpServletResponse send(String body) throws Exception {
        return ask(post("/api/releases").contentType(MediaType.APPLICATION_JSON).content(body));
    }

    private MockHttpServletResponse offer(OpeningId opening) throws Exception {
        return ask(get("/api/releases/{folder}/{opening}", folder.value(), opening.value()));
    }

    private MockHttpServletResponse ask(RequestBuilder request) throws Exception {
        SignedIn whoever = () -> Optional.of(person);
        return MockMvcBuilders.standaloneSetup(new ReleasesController(releases, states, whoever))
                .setControllerAdvice(new Problems(whoever))
                .build()
                .perform(request)
                .andReturn()
                .getResponse();
    }

    private static JsonNode json(MockHttpServletResponse response) throws Exception {
        return JSON.readTree(response.getContentAsByteArray());
    }

    private static String outcome(MockHttpServletResponse response) throws Exception {
        return json(response).path("outcome").stringValue();
    }

    private String body(OpeningId... openings) {
        return "{\"key\":\"%s\",\"folder\":%d,\"openings\":%s}"
                .formatted(
                        UUID.randomUUID(),
                        folder.value(),
                        Arrays.stream(openings)
                                .map(one -> "{\"opening\":\"%s\",\"version\":%d}"
                                        .formatted(one.value(), state(one).version()))
                                .collect(Collectors.joining(",", "[", "]")));
    }

    private int acts() {
        return db.fetchCount(HANDOFF_ACT, HANDOFF_ACT.FOLDER_ID.eq(folder.value()));
    }

    private OpeningState state(OpeningId opening) {
        return states.of(WallOfAll.SCHEDULER, folder, opening);
    }

    /** All that the window crew ticks itself. */
    private void install(OpeningId opening) {
        List<String> lines = state(opening).list().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .map(line -> line.code())
                .toList();
        for (String line : lines)
            assertThat(log.mark(
                            WallOfAll.WINDOW,
                            MarkRequest.done(
                                    UUID.randomUUID(), folder, opening, line, Instant.parse("2026-04-13T19:00:00Z"))))
                    .isInstanceOf(MarkResult.Marked.class);
    }
}
