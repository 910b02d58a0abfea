package drylap.bench;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.AuditReport;
import drylap.bench.ExactSolver.Result;
import drylap.intake.GeneratedFolder;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** OR-tools CP-SAT (com.google.ortools:ortools-java), a general constraint solver, plans by a contract written for it anew. */
class ExactModelTests {
    private static JobFolder folder(int openings, long seed) {
        return GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), seed);
    }

    private static Plan plan(JobFolder folder, long moves) {
        return ReferenceBench.plan(folder, new PlanRequest(null, null, moves, 1));
    }

    @ParameterizedTest
    @CsvSource({"8, 1, 0", "8, 2, 2000", "30, 1, 0", "30, 2, 2000", "30, 3, 2000"})
    void the_model_finds_the_planners_plan_legal_and_as_dear_as_its_ledger_says(int openings, long seed, long moves) {
        JobFolder folder = folder(openings, seed);
        Plan plan = plan(folder, moves);

        assertThat(plan.unplanned()).isEmpty();
        assertThat(ExactSolver.price(folder, plan.visits()))
                .contains(plan.ledger().soft());
    }

    /** Without set-up, open courses and rain that is not forecast, whose optimum it does not prove in minutes. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_planner_finds_the_proved_optimum_of_eight_openings(long seed) {
        Rules fewer = Rules.STANDARD
                .with(Rule.WEIGHT_OPEN_COURSE, 0)
                .with(Rule.WEIGHT_SETUP, 0)
                .with(Rule.BEYOND_RAIN_P, 0);
        JobFolder folder = folder(8, seed).withRules(RuleBook.of(fewer));

        Result best = ExactSolver.solve(folder, 180).orElseThrow();

        assertThat(best.proved()).isTrue();
        AuditReport report = ReferenceBench.audit(folder, best.visits());
        assertThat(report.breaches()).isEmpty();
        assertThat(report.ledger().medium()).isZero();
        assertThat(report.ledger().soft()).isEqualTo(best.cost());
        assertThat(plan(folder, 20_000).ledger().soft()).isEqualTo(best.cost());
    }
}
