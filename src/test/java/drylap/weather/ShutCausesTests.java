package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShutCausesTests {
    /** Open hours are worked out on bits of minutes, causes hour by hour. */
    @ParameterizedTest
    @EnumSource(Task.class)
    void a_minute_has_a_cause_exactly_when_it_is_not_open(Task task) {
        JobFolder folder = JobFixture.job(30, 4);
        Facade facade = folder.facades().getFirst();
        Instant from = JobFixture.MONDAY.atStartOfDay(JobFixture.ZONE).toInstant();
        TimeWindow span = new TimeWindow(from, from.plus(Duration.ofDays(6)));
        var site = folder.sites().getFirst();
        var forecast = folder.forecasts().getFirst();
        var open = SiteWeather.of(site, forecast, Rules.STANDARD, span)
                .openHours(facade)
                .windows(task);
        ShutCauses causes = ShutCauses.of(site, facade, forecast, Rules.STANDARD, span);
        for (Instant at = from; at.isBefore(span.until()); at = at.plusSeconds(300)) {
            TimeWindow minute = new TimeWindow(at, at.plusSeconds(60));
            boolean isOpen = open.stream().anyMatch(minute::overlaps);
            assertThat(causes.within(task, minute).isEmpty()).as("%s", at).isEqualTo(isOpen);
        }
    }
}
