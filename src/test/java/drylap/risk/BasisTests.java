package drylap.risk;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.Method;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.weather.Forecast;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class BasisTests {
    private static final Instant FROM = Demo.RAINY.plan().start();

    private final JobFolder folder = Demo.RAINY.folder();

    @Test
    void each_part_of_the_job_is_told_from_the_others() {
        assertThat(changed(UnaryOperator.identity())).isEmpty();
        assertThat(changed(job -> job.withOpenings(job.openings().stream()
                        .map(one -> one.standing(one.done() + 1, null, one.finished()))
                        .toList())))
                .containsExactly(OddsPart.LOG);
        assertThat(changed(job -> job.withOpenings(job.openings().stream()
                        .map(one -> one.standing(one.done(), null, Set.of(Task.WRAP)))
                        .toList())))
                .containsExactly(OddsPart.LOG);
        assertThat(changed(job -> job.withForecasts(
                        job.forecasts().stream().map(Demo::withoutRain).toList())))
                .containsExactly(OddsPart.FORECASTS);
        assertThat(changed(job -> job.withForecasts(List.<Forecast>of()))).containsExactly(OddsPart.FORECASTS);
        assertThat(changed(job -> job.withLabour(job.labour().withInstall(Method.A, new BigDecimal("1.2")))))
                .containsExactly(OddsPart.DURATIONS);
        assertThat(changed(job -> job.withRules(job.rules().with(null, Rule.COVER_MIN, 21))))
                .containsExactly(OddsPart.RULES);
        SiteId site = folder.sites().getFirst().id();
        assertThat(changed(job -> job.withRules(job.rules().with(site, Rule.COVER_MIN, 21))))
                .containsExactly(OddsPart.RULES);
        assertThat(changed(job ->
                        job.withShifts(job.shifts().subList(1, job.shifts().size()))))
                .containsExactly(OddsPart.SHIFTS);
    }

    @Test
    void a_day_later_what_was_due_goes_on_from_another_day() {
        Basis later = Basis.of(folder, List.of(), FROM.plus(Duration.ofDays(1)));

        assertThat(Basis.of(folder, List.of(), FROM).changedTo(later)).containsExactly(OddsPart.DAY);
    }

    private Set<OddsPart> changed(UnaryOperator<JobFolder> change) {
        return Basis.of(folder, List.of(), FROM).changedTo(Basis.of(change.apply(folder), List.of(), FROM));
    }
}
