package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Role;
import drylap.ui.PageTest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Everything that the document offers, used against the running application; each answer is as the document says. */
@PageTest
class EveryOperationDbTests {
    private static final String OPENING = "QW2-01";

    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    private long folder;
    private Program office = new Program("", new Document(Program.JSON.createObjectNode()), "", Set.of());
    private Program siding = office;

    @BeforeEach
    void a_folder_is_in_work() {
        String address = "http://localhost:" + port;
        folder = programs.published().value();
        office = programs.of(address, programs.people.scheduler());
        var trade = programs.people.add(Role.FOLLOW_ON, Reach.of(Set.of(new SiteId("Q"))), "P1");
        siding = new Program(address, office.document(), programs.token(trade), office.used());
    }

    @Test
    void every_operation_of_the_document_is_used() {
        readWhatIsDesigned();
        workAtTheOpening();
        handItOver();
        readWhatWasDone();
        bringAForecast();
        addAndChangeAnOpening();

        assertThat(office.used()).isEqualTo(office.document().ids());
    }

    private void readWhatIsDesigned() {
        office.call("readDocument", Map.of(), null);
        assertThat(siding.call("readMe", Map.of(), null).json().path("may").toString())
                .contains("\"accept\"")
                .doesNotContain("release");
        assertThat(items(office, "listFolders")).isNotEmpty();
        assertThat(items(office, "listSites")).hasSize(2);
        assertThat(items(siding, "listSites")).hasSize(1);
        assertThat(items(siding, "listFacades"))
                .singleElement()
                .satisfies(
                        wall -> assertThat(wall.path("azimuthDeg").asDouble()).isEqualTo(262));
        assertThat(items(office, "listCrews")).hasSize(3);
        assertThat(items(office, "listOpenings")).hasSize(5);
        assertThat(ok(office, "readPublication", Map.of(), null)
                        .json()
                        .path("by")
                        .asString())
                .isEqualTo("the sample");
        assertThat(items(office, "listVisits")).isNotEmpty();
    }

    /** Line by line, as each opening says what comes next. */
    private void workAtTheOpening() {
        var opening = ok(office, "readOpening", Map.of("opening", OPENING), null);
        while (!opening.json().path("releasable").asBoolean()) {
            String line = next(opening.json());
            opening = ok(
                    office,
                    "markLine",
                    Map.of("opening", OPENING, "If-Match", opening.tag(), "Idempotency-Key", Programs.key()),
                    Map.of("line", line, "kind", "done", "markedAt", "2026-04-13T19:00:00Z"));
        }
    }

    private static String next(JsonNode opening) {
        return opening.path("lines")
                .valueStream()
                .filter(line -> line.path("next").asBoolean()
                        && line.path("trade").asString().equals("window"))
                .findFirst()
                .orElseThrow()
                .path("line")
                .asString();
    }

    private void handItOver() {
        change(office, "releaseOpening", "released", Map.of("note", "by a program"));
        change(siding, "acceptOpening", "accepted", Map.of());
        change(siding, "returnOpening", "returned", Map.of("reason", "not-clean"));
    }

    private void change(Program program, String operation, String state, Map<String, ?> body) {
        var seen = ok(program, "readOpening", Map.of("opening", OPENING), null);
        var after = ok(
                program,
                operation,
                Map.of("opening", OPENING, "If-Match", seen.tag(), "Idempotency-Key", Programs.key()),
                body);
        assertThat(after.json().at("/hands/state").asString()).isEqualTo(state);
    }

    private void readWhatWasDone() {
        List<JsonNode> acts = items(siding, "listActs");
        assertThat(acts)
                .extracting(act -> act.path("kind").asString())
                .containsExactly("released", "accepted", "returned");
        var act = acts.getLast().path("act").asLong();
        assertThat(siding.call("readAct", Map.of("act", act), null)
                        .json()
                        .path("reason")
                        .asString())
                .isEqualTo("not-clean");
        assertThat(items(office, "listMarks", Map.of("opening", OPENING)))
                .last()
                .satisfies(mark -> assertThat(mark.path("kind").asString()).isEqualTo("undone"));
    }

    private void bringAForecast() {
        String file = """
                hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity
                2026-04-13T07:00-07:00,0,0.1,2,4,80,12,70
                2026-04-13T08:00-07:00,1.5,0.9,2,4,80,12,90
                """;
        var before = office.call("readForecast", Map.of("site", "Q"), null);
        var after = office.call("putForecast", Map.of("site", "Q", "If-Match", before.tag()), file);

        assertThat(after.status()).isEqualTo(200);
        assertThat(after.json().path("source").asString()).isEqualTo("upload");
        assertThat(after.json().at("/newest/until").asString()).isEqualTo("2026-04-13T16:00:00Z");
    }

    private void addAndChangeAnOpening() {
        Map<String, Object> design = new HashMap<>(
                Map.of("site", "Q", "facade", "west", "level", 2, "widthMm", 900, "heightMm", 1200, "frame", "vinyl"));
        design.putAll(Map.of(
                "method", "A",
                "approach", "drainage",
                "secondLayer", "none",
                "deliveredOn", "2026-04-10",
                "waterTest", false,
                "priority", 0));
        var added = with(office, "putOpening", Map.of("opening", "QW2 new", "If-None-Match", "*"), design);
        assertThat(added.status()).isEqualTo(201);
        design.put("widthMm", 1000);
        var changed = with(office, "putOpening", Map.of("opening", "QW2 new", "If-Match", added.tag()), design);
        assertThat(changed.json().at("/design/widthMm").asInt()).isEqualTo(1000);
    }

    private List<JsonNode> items(Program program, String operation) {
        return items(program, operation, Map.of());
    }

    private List<JsonNode> items(Program program, String operation, Map<String, ?> parameters) {
        return with(program, operation, parameters, null)
                .json()
                .path("items")
                .valueStream()
                .toList();
    }

    private Program.Answer ok(Program program, String operation, Map<String, ?> parameters, @Nullable Object body) {
        var answer = with(program, operation, parameters, body);
        assertThat(answer.status()).as("%s: %s", operation, answer.json()).isEqualTo(200);
        return answer;
    }

    /** With the folder, where the operation has one. */
    private Program.Answer with(Program program, String operation, Map<String, ?> parameters, @Nullable Object body) {
        Map<String, Object> all = new HashMap<>(parameters);
        var one = program.document().operation(operation);
        if (one.path().contains("{folder}")) all.put("folder", folder);
        return program.call(operation, all, body);
    }
}
