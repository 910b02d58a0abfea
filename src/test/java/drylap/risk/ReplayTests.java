package drylap.risk;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.climate.DrawnSky;
import drylap.climate.SiteSky;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import drylap.weather.OpenHours;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReplayTests {
    private final JobBook book = Demo.DRY.book();
    private final DrawnSky sky = new DrawnSky(book.skies);
    private final Draws draws = new Draws(book);
    private final Replay replay = new Replay(book, sky, draws);

    ReplayTests() {
        exactly();
        for (int site = 0; site < book.folder.sites().size(); site++) sky.set(site, new BitSet(), 1);
    }

    /** Every job takes what the labour table says, every delivery comes on its day. */
    private void exactly() {
        for (Job job : book.jobs) draws.minutes[job.index] = job.minutes;
        for (int lot = 0; lot < draws.delivered.length; lot++)
            draws.delivered[lot] = book.delivered(book.lots.get(lot), 0);
    }

    @Test
    void without_rain_and_without_spread_everything_goes_as_planned() {
        replay.run();

        assertThat(book.jobs).hasSize(Demo.DRY.plan().visits().size());
        for (Job job : book.jobs)
            assertThat(book.axis.at(replay.end[job.index])).as("%s", job.visit).isEqualTo(job.visit.end());
        assertThat(replay.covers).containsOnly(0);
        assertThat(replay.rainedOn).doesNotContain(true);
    }

    /** One hour of rain from 90 minutes after the first install's start to its end and beyond, unseen when it began. */
    @Test
    void rain_that_nobody_saw_coming_stops_an_install_which_is_covered_and_ended_later() {
        Job job = longInstall();
        draws.minutes[job.index] = 300;
        int hour = rainAfter(job, 90);
        replay.run();

        assertThat(replay.covers[job.index]).isEqualTo(1);
        assertThat(replay.rainedOn[job.index]).isTrue();
        assertThat(replay.end[job.index]).isGreaterThan(startOf(job, hour + 1) + 300 - 90 - 60);
    }

    @Test
    void rain_that_is_seen_coming_keeps_the_opening_shut() {
        Job job = longInstall();
        rainAfter(job, 0);
        replay.run();

        assertThat(replay.covers[job.index]).isZero();
        assertThat(replay.rainedOn[job.index]).isFalse();
        assertThat(replay.end[job.index]).isGreaterThan(job.planned + job.minutes);
    }

    @Test
    void what_comes_late_pushes_the_crews_next_job_and_never_swaps_their_order() {
        Job job = longInstall();
        draws.minutes[job.index] += 45;
        replay.run();

        int[] ends = Arrays.stream(book.jobs)
                .filter(other -> other.crew == job.crew)
                .mapToInt(other -> replay.end[other.index])
                .toArray();
        assertThat(ends).isSorted();
        assertThat(replay.end[job.index]).isEqualTo(job.planned + job.minutes + 45);
    }

    @Test
    void a_window_that_comes_days_late_is_set_days_late() {
        JobFolder later = Demo.DRY
                .folder()
                .withOpenings(Demo.DRY.folder().openings().stream()
                        .map(opening ->
                                opening.deliveredOn(opening.deliveredOn().plusDays(7)))
                        .toList());
        JobBook waiting =
                new JobBook(later, Demo.DRY.plan().visits(), Demo.DRY.plan().start(), Demo.desert());
        assertThat(waiting.lots).isNotEmpty();
        Draws late = new Draws(waiting);
        for (Job job : waiting.jobs) late.minutes[job.index] = job.minutes;
        for (int lot = 0; lot < late.delivered.length; lot++)
            late.delivered[lot] = waiting.delivered(waiting.lots.get(lot), 4);
        DrawnSky dry = new DrawnSky(waiting.skies);
        Replay slow = new Replay(waiting, dry, late);
        slow.run();

        for (Job job : waiting.jobs)
            if (job.delivery >= 0)
                assertThat(slow.end[job.index]).isGreaterThanOrEqualTo(late.delivered[job.delivery] + job.minutes);
    }

    /** The bits of the replay against the open hours that planner and screens use. */
    @Test
    void drawn_weather_shuts_the_same_minutes_as_the_open_hours_of_a_forecast_of_it() {
        BitSet wet = new BitSet();
        Random random = new Random(5);
        for (int hour = 80; hour < 200; hour++) if (random.nextInt(6) == 0) wet.set(hour);
        SiteSky first = book.skies.at(0);
        sky.set(0, wet, 1.5);
        Forecast drawn = drawn(first, wet, 1.5);
        SiteWeather weather = SiteWeather.of(
                first.site(), drawn, first.rules().with(drylap.kernel.Rule.SKIN_MIN, 0), book.axis.span());
        for (int wall : book.skies.wallsOf(0)) {
            Facade facade = book.skies.walls().get(wall);
            OpenHours open = weather.openHours(facade);
            for (int minute = 80 * 60; minute < 200 * 60; minute += 7) {
                boolean ours = !sky.shut(wall).get((minute - first.grid()) / 60)
                        && first.known(Task.INSTALL).fit(minute, 1) == minute;
                assertThat(ours)
                        .as("%s at %d", facade.id(), minute)
                        .isEqualTo(within(open.windows(Task.INSTALL), minute));
            }
        }
    }

    private Forecast drawn(SiteSky first, BitSet wet, double millimetres) {
        Forecast told = book.folder.forecasts().stream()
                .filter(forecast -> forecast.site().equals(first.site().id()))
                .findFirst()
                .orElseThrow();
        List<ForecastHour> hours = new ArrayList<>();
        for (ForecastHour hour : told.hours()) {
            int index = (book.axis.floor(hour.start()) - first.grid()) / 60;
            boolean rains = index >= 0 && wet.get(index);
            hours.add(new ForecastHour(
                    hour.start(),
                    rains ? millimetres : 0,
                    rains ? 1 : 0,
                    hour.windMs(),
                    hour.gustMs(),
                    hour.windFromDeg(),
                    hour.temperatureC(),
                    hour.relativeHumidity()));
        }
        return new Forecast(told.site(), hours);
    }

    private boolean within(List<TimeWindow> windows, int minute) {
        var at = book.axis.at(minute);
        return windows.stream()
                .anyMatch(window ->
                        window.contains(at) && !at.plus(Duration.ofMinutes(1)).isAfter(window.until()));
    }

    private Job longInstall() {
        return Arrays.stream(book.jobs)
                .filter(job -> job.task == Task.INSTALL && !job.openBefore)
                .findFirst()
                .orElseThrow();
    }

    /** One wet hour, the first that begins so many minutes after the job's start. */
    private int rainAfter(Job job, int minutes) {
        int grid = book.skies.at(job.site).grid();
        int hour = Math.ceilDiv(job.planned + minutes - grid, 60);
        BitSet wet = new BitSet();
        wet.set(hour);
        sky.set(job.site, wet, 2);
        return hour;
    }

    private int startOf(Job job, int hour) {
        return book.skies.at(job.site).grid() + hour * 60;
    }
}
