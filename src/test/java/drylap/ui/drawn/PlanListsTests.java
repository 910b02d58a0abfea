package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.PlanProgress;
import drylap.planning.RunId;
import drylap.planning.RunPoint;
import drylap.planning.RunState;
import drylap.planning.UnplannedReason;
import drylap.speech.Speech;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanListsTests {
    @Test
    void lists_what_is_not_planned_by_reason_and_what_only_waits_last() {
        NotPlanned left = NotPlanned.of(
                Speech.ENGLISH,
                new QuayPlan()
                        .without("QW2-01", Task.WRAP, UnplannedReason.WAITS_FOR_TASK, "waits for install")
                        .without("QW2-01", Task.CLAD, UnplannedReason.WAITS_FOR_TASK, "waits for wrap")
                        .without("QW2-01", Task.INSTALL, UnplannedReason.NO_DRY_WINDOW, "needs 70 min")
                        .shown());
        assertThat(left.count()).isEqualTo(3);
        assertThat(left.groups())
                .extracting(NotPlanned.Group::reason)
                .containsExactly("No dry window is long enough", "Waits for another task");
        assertThat(left.groups().getFirst().rows().getFirst())
                .isEqualTo(
                        new NotPlanned.Row("QW2-01", "Quay Nine, west, level 2", "Install", "install", "needs 70 min"));
    }

    @Test
    void lists_what_to_cover_by_the_rain_that_comes_first() {
        CoverNowList list = CoverNowList.of(
                Speech.ENGLISH,
                new QuayPlan()
                        .cover("MS1-02", "13:00", 20)
                        .cover("QW1-01", "12:00", 31)
                        .shown());
        assertThat(list.rows()).extracting(CoverNowList.Row::opening).containsExactly("QW1-01", "MS1-02");
        assertThat(list.rows().getFirst())
                .isEqualTo(new CoverNowList.Row(
                        "QW1-01",
                        "Quay Nine, west, level 1",
                        "Sun 12 Apr 15:30",
                        "Mon 13 Apr 12:00",
                        31,
                        LocalDateTime.of(2026, 4, 13, 12, 0),
                        LocalDateTime.of(2026, 4, 12, 15, 30)));
    }

    @Test
    void shows_each_cost_as_a_share_of_the_sum() {
        var ledger = new Ledger(
                List.of(
                        new Ledger.Line(LedgerTerm.CREW_DAYS, 3, 400, 1200),
                        new Ledger.Line(LedgerTerm.TRAVEL, 200, 2, 400)),
                0,
                0,
                1600);
        assertThat(LedgerSheet.of(Speech.ENGLISH, ledger).rows())
                .extracting(LedgerSheet.Row::share)
                .containsExactly(0.75, 0.25);
    }

    @Test
    void shares_nothing_out_where_the_sum_is_nought() {
        var ledger = new Ledger(List.of(new Ledger.Line(LedgerTerm.TRAVEL, 0, 2, 0)), 0, 0, 0);
        assertThat(LedgerSheet.of(Speech.ENGLISH, ledger).rows().getFirst().share())
                .isZero();
    }

    @Test
    void says_why_a_run_failed() {
        var nothing = new PlanProgress(Duration.ZERO, 0, 0, 0, 0, 0);
        Run run = Run.of(
                Speech.ENGLISH,
                new RunState(new RunId(7), RunState.Status.FAILED, null, nothing, List.of(), "the database went away"));
        assertThat(run.words()).isEqualTo("Planning failed: the database went away");
        assertThat(run.ended()).isTrue();
    }

    @Test
    void counts_a_running_run_in_seconds() {
        var progress = new PlanProgress(Duration.ofMillis(1500), 4000, 1000, 77, 9, 1);
        var points = List.of(
                new RunPoint(Duration.ofMillis(250), 3000, 60, 3), new RunPoint(Duration.ofMillis(750), 1000, 77, 1));
        Run run = Run.of(
                Speech.ENGLISH,
                new RunState(new RunId(7), RunState.Status.RUNNING, Duration.ofSeconds(300), progress, points, null));
        assertThat(run.ofSeconds()).isEqualTo(300);
        assertThat(run.points()).containsExactly(new Run.Point(0.25, 60, 3), new Run.Point(0.75, 77, 1));
        assertThat(run.seconds()).isEqualTo(1.5);
        assertThat(run.cost()).isEqualTo(77);
        assertThat(run.ended()).isFalse();
    }
}
