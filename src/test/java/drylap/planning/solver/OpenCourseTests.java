package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class OpenCourseTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().openCourse(factory));

    @Test
    void the_hours_from_first_install_to_last_count_as_started() {
        verdict.amount(3, install("W1").at(0), install("W2").at(HOUR + 1));
    }

    @Test
    void a_course_of_one_install_counts_its_own_hour() {
        verdict.amount(1, install("W1").at(0));
    }

    @Test
    void each_course_counts_by_itself() {
        verdict.amount(2, install("W1").at(0), install("W2").level(2).at(9 * HOUR));
    }

    @Test
    void a_course_without_planned_installs_costs_nothing() {
        verdict.amount(0, install("W1").unplanned(), wrap("W2").at(0));
    }
}
