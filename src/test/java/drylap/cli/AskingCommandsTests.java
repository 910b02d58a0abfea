package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The commands that ask of a plan: why, and what if. */
class AskingCommandsTests extends CommandLineOverAJob {
    @BeforeEach
    void planAJob() {
        plan(8, 200);
    }

    private List<String> firstVisit() throws IOException {
        return List.of(
                Files.readAllLines(place.resolve("plan/visits.csv")).get(1).split(","));
    }

    @Test
    void a_visit_is_explained_with_a_rule_that_binds_and_what_moves_cost() throws IOException {
        String opening = firstVisit().get(6);
        String task = firstVisit().get(7);
        assertThat(run("explain", "--jobs", in("job"), "--plan", in("plan"), opening, task))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("The %s of %s: crew".formatted(task, opening), "  binds ", "one working day later: ")
                .contains("first in line of its day: ", "never a statement that work at height is safe");
    }

    @Test
    void what_no_plan_has_is_refused() {
        assertThat(run("explain", "--jobs", in("job"), "--plan", in("plan"), "nowhere", "clad"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("clad of nowhere", "visits.csv or unplanned.csv");
        assertThat(run("explain", "--jobs", in("job"), "--plan", in("plan"), "nowhere", "paint"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("paint", "install, test, wrap, clad");
    }

    @Test
    void a_plan_that_breaks_a_rule_is_not_explained() throws IOException {
        Path visits = place.resolve("plan/visits.csv");
        List<String> lines = Files.readAllLines(visits);
        Files.write(visits, lines.subList(0, lines.size() - 1));
        assertThat(run(
                        "explain",
                        "--jobs",
                        in("job"),
                        "--plan",
                        in("plan"),
                        firstVisit().get(6),
                        firstVisit().get(7)))
                .isEqualTo(2);
        assertThat(err.toString()).contains("drylap check");
    }

    @Test
    void scenarios_stand_beside_the_folder_as_it_is() throws IOException {
        Files.writeString(place.resolve("s.csv"), "scenario,change,percent\ndry,rain by percent,-100\n");
        assertThat(run("whatif", "--jobs", in("job"), "--scenarios", in("s.csv"), "--moves", "100"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .containsPattern("as it is +dry")
                .contains("tasks not planned", "rain_risk", "days crews come out", "clad by, due");
        Files.writeString(place.resolve("s.csv"), "scenario,change,percent\ndry,rain by percent,x\n");
        assertThat(run("whatif", "--jobs", in("job"), "--scenarios", in("s.csv")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("s.csv:2 percent", "(x)", "-100 to 1000");
    }
}
