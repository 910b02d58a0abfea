package drylap.api.v1;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Person;
import drylap.security.Role;
import drylap.tokens.Scope;
import drylap.ui.PageTest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Who comes in, how far they see, and what they are told who ask wrongly. */
@PageTest
class DoorDbTests {
    private static final String MILL_OPENING = "MS1-01";

    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    @Autowired
    private DSLContext db;

    private String address = "";
    private long folder;
    private Person scheduler =
            new Person(new drylap.kernel.PersonId(0), "", "", Role.SCHEDULER, Reach.NOWHERE, null, false);

    @BeforeEach
    void a_folder_is_in_work() {
        address = "http://localhost:" + port;
        folder = programs.published().value();
        scheduler = programs.people.scheduler();
    }

    private Program program(String token) {
        return new Program(address, new Document(Program.JSON.createObjectNode()), token, new TreeSet<>());
    }

    private static HttpResponse<String> get(Program program, String path) {
        return program.raw(program.at(path).GET());
    }

    @Test
    void without_a_token_or_with_one_that_opens_nothing_nobody_comes_in() {
        var nobody = Program.send(program("").at("/api/v1/me").GET().build());
        assertThat(nobody.statusCode()).isEqualTo(401);
        assertThat(nobody.headers().firstValue("WWW-Authenticate")).hasValue("Bearer");
        assertThat(nobody.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");

        assertThat(get(program("drylap_unknown"), "/api/v1/me").statusCode()).isEqualTo(401);
        assertThat(get(program(""), "/api/v1/me").statusCode()).isEqualTo(401);
    }

    @Test
    void a_token_ends_when_it_is_revoked_when_it_expires_and_when_its_person_is_signed_off() {
        var revoked = program(programs.token(scheduler));
        assertThat(get(revoked, "/api/v1/me").statusCode()).isEqualTo(200);
        programs.tokens.revoke(
                scheduler, programs.tokens.seenBy(scheduler).getFirst().id());
        assertThat(get(revoked, "/api/v1/me").statusCode()).isEqualTo(401);

        var expired = program(programs.token(scheduler));
        db.update(API_TOKEN)
                .set(API_TOKEN.MADE_AT, Instant.parse("2026-04-13T19:00:00Z"))
                .set(API_TOKEN.EXPIRES_AT, Instant.parse("2026-04-14T19:00:00Z"))
                .where(API_TOKEN.ID.eq(
                        programs.tokens.seenBy(scheduler).getFirst().id()))
                .execute();
        assertThat(get(expired, "/api/v1/me").statusCode()).isEqualTo(401);
    }

    @Test
    void a_token_gives_what_its_scopes_give_and_no_more() {
        var reader = program(programs.token(scheduler, Reach.EVERYWHERE, EnumSet.of(Scope.READ)));
        String opening = "/api/v1/folders/%d/openings/QW2-01".formatted(folder);
        var seen = get(reader, opening);
        assertThat(seen.statusCode()).isEqualTo(200);

        for (String what : List.of("/marks", "/releases")) {
            String body = what.equals("/marks")
                    ? "{\"line\":\"RO\",\"kind\":\"done\",\"markedAt\":\"2026-04-13T19:00:00Z\"}"
                    : "{}";
            var refused = reader.raw(reader.at(opening + what)
                    .header("Content-Type", "application/json")
                    .header("If-Match", seen.headers().firstValue("ETag").orElseThrow())
                    .header("Idempotency-Key", Programs.key())
                    .POST(BodyPublishers.ofString(body)));
            assertThat(refused.statusCode()).as(what).isEqualTo(403);
        }
    }

    @Test
    void a_token_gives_no_more_than_its_person_may_now() {
        var tester = programs.people.add(Role.TESTER, Reach.of(Set.of(new SiteId("Q"))), "W1");
        var program = program(programs.token(tester));

        var me = Program.JSON.readTree(get(program, "/api/v1/me").body());

        assertThat(me.path("may").toString()).contains("see-openings").doesNotContain("mark-install", "see-folders");
        assertThat(me.path("sites").toString()).isEqualTo("[\"Q\"]");
        assertThat(get(program, "/api/v1/folders/%d/crews".formatted(folder)).statusCode())
                .isEqualTo(403);
    }

    /** Every address of the document that names something, asked for what lies at the other site, and for what is nowhere. */
    @Test
    void what_is_at_another_site_is_answered_as_what_is_nowhere() {
        var quay = Reach.of(Set.of(new SiteId("Q")));
        var elsewhere = programs.people.add(Role.SCHEDULER, quay, null);
        var document = programs.of(address, scheduler).document();
        int asked = 0;
        for (String token :
                List.of(programs.token(elsewhere), programs.token(scheduler, quay, EnumSet.allOf(Scope.class)))) {
            for (var one : document.all()) {
                if (!one.path().contains("{opening}") && !one.path().contains("{site}")) continue;
                asked++;
                var foreign = ask(program(token), document, one, MILL_OPENING, "M");
                var nowhere = ask(program(token), document, one, "nothing", "nowhere");
                assertThat(foreign.statusCode())
                        .as("%s %s", one.method(), one.path())
                        .isEqualTo(404);
                assertThat(withoutId(foreign.body()).replace(MILL_OPENING, "nothing"))
                        .as("%s %s", one.method(), one.path())
                        .isEqualTo(withoutId(nowhere.body()));
            }
        }
        assertThat(asked).isEqualTo(2 * 9);
    }

    /** Each request has one of its own, drawn at random. */
    private static String withoutId(String problem) {
        return problem.replaceFirst("\"instance\":\"urn:uuid:[-0-9a-f]{36}\"", "");
    }

    private HttpResponse<String> ask(
            Program program, Document document, Document.Operation one, String opening, String site) {
        String path = one.path()
                .replace("{folder}", String.valueOf(folder))
                .replace("{opening}", opening)
                .replace("{site}", site);
        var request = program.at(path)
                .header("If-Match", "\"any\"")
                .header("Idempotency-Key", Programs.key())
                .header("Content-Type", path.endsWith("forecast") ? "text/csv" : "application/json");
        var body = one.node().has("requestBody") ? BodyPublishers.ofString("{}") : BodyPublishers.noBody();
        return program.raw(request.method(one.method(), body));
    }

    @Test
    void lists_hold_what_is_within_reach_and_nothing_else() {
        var program = program(programs.token(scheduler, Reach.of(Set.of(new SiteId("M"))), EnumSet.allOf(Scope.class)));
        for (String list : List.of("sites", "facades", "openings", "visits", "acts")) {
            var found = get(program, "/api/v1/folders/%d/%s".formatted(folder, list));
            assertThat(found.statusCode()).as(list).isEqualTo(200);
            assertThat(found.body()).as(list).doesNotContain("\"Q\"", "QW1", "QW2");
        }
    }

    @Test
    void an_act_at_another_site_is_answered_as_none() {
        long act = db.insertInto(HANDOFF_ACT)
                .set(HANDOFF_ACT.ACT_KEY, java.util.UUID.randomUUID())
                .set(HANDOFF_ACT.FOLDER_ID, folder)
                .set(HANDOFF_ACT.SITE, "M")
                .set(HANDOFF_ACT.KIND, "accepted")
                .set(HANDOFF_ACT.PERSON_ID, scheduler.id().value())
                .set(HANDOFF_ACT.PERSON, "x")
                .set(HANDOFF_ACT.ROLE, "x")
                .set(HANDOFF_ACT.AT, Instant.parse("2026-04-13T19:00:00Z"))
                .set(HANDOFF_ACT.NOTE, "")
                .returning(HANDOFF_ACT.ID)
                .fetchSingle(HANDOFF_ACT.ID);
        var quay = program(programs.token(scheduler, Reach.of(Set.of(new SiteId("Q"))), EnumSet.of(Scope.READ)));

        assertThat(get(program(programs.token(scheduler)), "/api/v1/acts/" + act)
                        .statusCode())
                .isEqualTo(200);
        assertThat(get(quay, "/api/v1/acts/" + act).statusCode()).isEqualTo(404);
    }

    @Test
    void a_list_is_read_part_by_part_by_its_links_and_what_is_added_meanwhile_moves_nothing() {
        var program = program(programs.token(scheduler));
        List<String> names = new ArrayList<>();
        String next = "/api/v1/folders/%d/openings?limit=2&site=Q".formatted(folder);
        while (!next.isEmpty()) {
            var part = get(program, next);
            Program.JSON
                    .readTree(part.body())
                    .path("items")
                    .forEach(one -> names.add(one.path("opening").asString()));
            next = part.headers()
                    .firstValue("Link")
                    .map(link -> link.replaceFirst("<(.*)>; rel=\"next\"", "$1"))
                    .orElse("");
        }

        assertThat(names).containsExactly("QW1-01", "QW1-02", "QW2-01");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /openings?lmit=3            | lmit   | no parameter here; accepted: site, limit, cursor
            /openings?limit=0           | limit  | 1 to 200
            /openings?limit=201         | limit  | 1 to 200
            /openings?limit=a           | limit  | 1 to 200
            /openings?limit=1&limit=2   | limit  | 2 times
            /openings?cursor=%25        | cursor | accepted
            /openings/QW2-01?site=Q     | site   | accepted: none
            """)
    void a_parameter_that_is_wrong_is_named(String path, String field, String words) {
        var refused = get(program(programs.token(scheduler)), "/api/v1/folders/%d%s".formatted(folder, path));

        assertThat(refused.statusCode()).isEqualTo(400);
        JsonNode errors = Program.JSON.readTree(refused.body()).path("errors");
        assertThat(errors).hasSize(1);
        assertThat(errors.get(0).path("field").asString()).isEqualTo(field);
        assertThat(errors.get(0).path("problem").asString()).contains(words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"line":"RO","kind":"done","markedAt":"2026-04-13T19:00:00Z","colour":"red"} | mark.colour
            {"line":"XX","kind":"done","markedAt":"2026-04-13T19:00:00Z"}                | mark.line
            {"line":"RO","kind":"undone","markedAt":"2026-04-13T19:00:00Z"}              | mark.reason
            {"line":"RO","kind":"done","markedAt":"noon"}                                | mark.markedAt
            []                                                                           | mark
            """)
    void a_field_that_is_wrong_or_unknown_is_named_and_nothing_is_done(String body, String field) {
        var program = program(programs.token(scheduler));
        String opening = "/api/v1/folders/%d/openings/QW2-01".formatted(folder);
        String tag = get(program, opening).headers().firstValue("ETag").orElseThrow();

        var refused = program.raw(program.at(opening + "/marks")
                .header("Content-Type", "application/json")
                .header("If-Match", tag)
                .header("Idempotency-Key", Programs.key())
                .POST(BodyPublishers.ofString(body)));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(Program.JSON.readTree(refused.body()).at("/errors/0/field").asString())
                .isEqualTo(field);
        assertThat(get(program, opening).headers().firstValue("ETag")).hasValue(tag);
    }

    @ParameterizedTest
    @CsvSource({
        "GET, /api/v1/nothing, 404",
        "GET, /api/v1/folders/x/sites, 404",
        "GET, /api/v1/folders/999999/sites, 404",
        "DELETE, /api/v1/me, 404",
        "GET, /api/v1/acts/999999, 404"
    })
    void every_trouble_is_a_problem_document(String method, String path, int status) {
        var program = program(programs.token(scheduler));
        var answer = program.raw(program.at(path).method(method, BodyPublishers.noBody()));

        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
    }

    @Test
    void an_opening_changes_only_as_a_window_schedule_would_change_it() {
        var program = programs.of(address, scheduler);
        var begun = program.call("readOpening", Map.of("folder", folder, "opening", "QW1-01"), null);
        Map<String, Object> design = new HashMap<>();
        begun.json().path("design").properties().forEach(one -> design.put(one.getKey(), one.getValue()));
        design.put("widthMm", 1300);
        Map<String, Object> given = Map.of("folder", folder, "opening", "QW1-01", "If-Match", begun.tag());
        assertThat(program.call("putOpening", given, design).status()).isEqualTo(409);

        design.put("deliveredOn", "2026-05-01");
        var settled = program.call("putOpening", given, design);
        assertThat(settled.status()).isEqualTo(422);
        assertThat(settled.json().at("/errors/0/field").asString()).isEqualTo("opening.deliveredOn");

        design.put("facade", "nowhere");
        var added =
                program.call("putOpening", Map.of("folder", folder, "opening", "new", "If-None-Match", "*"), design);
        assertThat(added.status()).isEqualTo(422);
        var there =
                program.call("putOpening", Map.of("folder", folder, "opening", "QW1-01", "If-None-Match", "*"), design);
        assertThat(there.status()).isIn(412, 422);
    }
}
