package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.forecasts.ForecastSource;
import drylap.forecasts.SourceAges.Age;
import drylap.platform.JobStatus;
import drylap.platform.WorkState.Line;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What is said to be wrong, and when; the limits are common practice, no source. */
class MachineSheetTests {
    private static final Instant NOW = Instant.parse("2026-04-13T16:00:00Z");
    private static final long GIB = 1L << 30;

    private static Line job(JobStatus status, Duration askedAgo, Duration silent) {
        boolean runs = status == JobStatus.RUNNING;
        return new Line(
                7,
                "plan",
                status,
                NOW.minus(askedAgo),
                1,
                runs ? "quay/42" : null,
                runs ? NOW.minus(silent) : null,
                NOW,
                status == JobStatus.FAILED ? "out of memory" : null);
    }

    private static List<String> wrong(List<Line> jobs, List<Age> sources, long free) {
        var found = new MachineSheet.Found(NOW, jobs, sources, Optional.empty(), 5L << 20, OptionalLong.of(free), "1");
        return MachineSheet.of(found).wrong().stream().map(Saying::words).toList();
    }

    @Test
    void all_is_well_where_jobs_are_done_forecasts_are_fresh_and_there_is_room() {
        var fresh = new Age(ForecastSource.OPEN_METEO, 3, 0, NOW.minus(Duration.ofHours(24)));
        assertThat(wrong(
                        List.of(
                                job(JobStatus.RUNNING, Duration.ofHours(1), Duration.ofSeconds(60)),
                                job(JobStatus.QUEUED, Duration.ofHours(1), Duration.ZERO)),
                        List.of(fresh),
                        2 * GIB))
                .isEmpty();
        assertThat(wrong(List.of(job(JobStatus.QUEUED, Duration.ofMinutes(10), Duration.ZERO)), List.of(), 2 * GIB))
                .isEmpty();
    }

    @Test
    void each_trouble_says_what_to_do() {
        assertThat(wrong(List.of(job(JobStatus.QUEUED, Duration.ofMinutes(11), Duration.ZERO)), List.of(), 2 * GIB))
                .containsExactly(
                        "Jobs wait and nobody does them. See that a node works: DRYLAP_WORK_THREADS above 0, or ./drylap worker.");
        assertThat(wrong(
                        List.of(job(JobStatus.RUNNING, Duration.ofHours(1), Duration.ofSeconds(61))),
                        List.of(),
                        2 * GIB))
                .containsExactly(
                        "Job 7 is with a node that is silent. Another one takes it over; see whether quay/42 still runs.");
        assertThat(wrong(List.of(job(JobStatus.FAILED, Duration.ofHours(1), Duration.ZERO)), List.of(), 2 * GIB))
                .containsExactly("Jobs that failed this week: 1. Below is why; ask for them again on their page.");
        assertThat(wrong(
                        List.of(),
                        List.of(
                                new Age(ForecastSource.MET_NORWAY, 1, 1, NOW.minus(Duration.ofHours(25))),
                                new Age(ForecastSource.OPEN_METEO, 1, 1, null)),
                        2 * GIB - 1))
                .containsExactly(
                        "The newest forecast of MET Norway, Locationforecast is 25 h old. A scheduler sees why under Open hours, at each site.",
                        "Nothing was ever fetched from Open-Meteo, hourly. A scheduler sees why under Open hours, at each site; is there a way to the internet?",
                        "Only 2047 MB are free where the data are. Make room: on a full disk nothing can be marked.");
    }
}
