package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Reach;
import drylap.security.Person;
import drylap.security.Role;
import drylap.ui.PageTest;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Which operations a program may use for people of each role, with every scope and at every site. */
@PageTest
class RightsOfProgramsDbTests {
    private static final String AGREED = """
            readDocument    x x x x x x
            readMe          x x x x x x
            listFolders     x x x x x x
            listSites       x x x x . x
            listFacades     x x x x . x
            listCrews       x . . . . x
            readPublication x x . x . x
            listVisits      x x . x . x
            listActs        x x x x . x
            listOpenings    x x x x . x
            readOpening     x x x x . x
            listMarks       x x x x . x
            markLine        x x . . . x
            releaseOpening  x x . . . x
            acceptOpening   . . x . . .
            returnOpening   . . x . . .
            putOpening      x . . . . x
            readForecast    x . . . . x
            putForecast     x . . . . x
            """;

    private static final Map<String, Object> DESIGN = design();
    private static final Set<Integer> NOT_THEIRS = Set.of(401, 403, 404);

    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    private long folder;

    @Test
    void a_program_may_what_its_person_may_and_nothing_else() {
        folder = programs.published().value();
        var document = programs.of("http://localhost:" + port, programs.people.scheduler())
                .document();
        Map<String, StringBuilder> found = new LinkedHashMap<>();
        AGREED.lines().forEach(line -> found.put(line.split(" ", 2)[0], new StringBuilder()));
        for (Role role : Role.values()) {
            var program =
                    new Program("http://localhost:" + port, document, programs.token(person(role)), new TreeSet<>());
            found.forEach((operation, answers) -> answers.append(answered(program, operation) ? " x" : " ."));
        }

        assertThat(found.entrySet().stream()
                        .map(one -> "%-15s%s".formatted(one.getKey(), one.getValue()))
                        .toList())
                .isEqualTo(AGREED.lines().toList());
    }

    @Test
    void the_agreement_names_every_operation() {
        var named =
                new TreeSet<>(AGREED.lines().map(line -> line.split(" ", 2)[0]).toList());
        // of a record somebody sees what the list shows of it
        named.add("readAct");
        assertThat(named)
                .isEqualTo(programs.of("http://localhost:" + port, programs.people.scheduler())
                        .document()
                        .ids());
    }

    private Person person(Role role) {
        return programs.people.add(role, Reach.EVERYWHERE, role.inCrew() ? "W1" : null);
    }

    private boolean answered(Program program, String operation) {
        Map<String, Object> given = new HashMap<>();
        String path = program.document().operation(operation).path();
        if (path.contains("{folder}")) given.put("folder", folder);
        if (path.contains("{opening}")) given.put("opening", "QW2-01");
        if (path.contains("{site}")) given.put("site", "Q");
        JsonNode before = null;
        if (!program.document().operation(operation).method().equals("GET")) {
            var seen = program.call(path.contains("{site}") ? "readForecast" : "readOpening", given, null);
            given.put("If-Match", seen.etag() == null ? "\"none\"" : seen.etag());
            given.put("Idempotency-Key", Programs.key());
            before = seen.json();
        }
        return !NOT_THEIRS.contains(
                program.call(operation, given, body(operation, before)).status());
    }

    private static @Nullable Object body(String operation, @Nullable JsonNode before) {
        return switch (operation) {
            case "markLine" -> Map.of("line", "RO", "kind", "done", "markedAt", "2026-04-13T19:00:00Z");
            case "releaseOpening", "acceptOpening" -> Map.of();
            case "returnOpening" -> Map.of("reason", "not-clean");
            case "putOpening" -> before == null || !before.has("design") ? DESIGN : before.path("design");
            case "putForecast" -> "hour_start";
            default -> null;
        };
    }

    private static Map<String, Object> design() {
        Map<String, Object> design = new HashMap<>(Map.of("site", "Q", "facade", "west", "frame", "vinyl"));
        List.of("level", "widthMm", "heightMm").forEach(name -> design.put(name, 200));
        design.putAll(Map.of("method", "A", "approach", "drainage", "secondLayer", "none"));
        design.putAll(Map.of("deliveredOn", "2026-04-10", "waterTest", false, "priority", 0));
        return design;
    }
}
