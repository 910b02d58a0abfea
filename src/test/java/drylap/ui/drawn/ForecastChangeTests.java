package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Visit;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.ForecastChange.VisitRow;
import drylap.ui.drawn.ForecastChange.WallRow;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The folder's forecast has rain on Monday from noon to two; the wind comes from behind the wall, so that it stays dry. */
class ForecastChangeTests {
    private static final Instant SIX = at(MONDAY, "06:00");

    private final FolderShown shown = QuayPlan.unplannedFolder();
    private final Site quay = shown.folder().sites().getFirst();
    private final Forecast own = shown.folder().forecasts().getFirst();

    private Forecast rainAt(Set<Instant> hours) {
        return new Forecast(
                quay.id(),
                own.hours().stream()
                        .map(hour -> new ForecastHour(
                                hour.start(),
                                hours.contains(hour.start()) ? 1 : 0,
                                hours.contains(hour.start()) ? 0.8 : 0,
                                hour.windMs(),
                                hour.gustMs(),
                                hour.windFromDeg(),
                                hour.temperatureC(),
                                hour.relativeHumidity()))
                        .toList());
    }

    private ForecastChange change(Forecast earlier, Forecast later, List<Visit> published) {
        return ForecastChange.of(Speech.ENGLISH, new ForecastChange.Asked(shown, quay, earlier, later, published), SIX);
    }

    /** Sealant must skin for half an hour before the rain, by the standard rules. */
    @Test
    void hours_that_open_and_shut_are_told_for_each_wall_and_task() {
        Forecast morning = rainAt(Set.of(at(MONDAY, "09:00"), at(MONDAY, "10:00")));

        ForecastChange change = change(own, morning, List.of());

        assertThat(change.walls())
                .containsExactly(
                        row(Task.INSTALL, "11:30 to 14:00", "08:30 to 11:00", "2.5 h opened, 2.5 h shut"),
                        row(Task.WRAP, "12:00 to 14:00", "09:00 to 11:00", "2.0 h opened, 2.0 h shut"),
                        row(Task.CLAD, "12:00 to 14:00", "09:00 to 11:00", "2.0 h opened, 2.0 h shut"));
        assertThat(change.same()).as("the water test does not mind").isEqualTo(1);
        assertThat(change.notes())
                .containsExactly(
                        "The earlier forecast ends Tue 14 Apr 12:00: hours after it counted as open.",
                        "The later forecast ends Tue 14 Apr 12:00: hours after it count as open.");
    }

    private static WallRow row(Task task, String opened, String shut, String hours) {
        return new WallRow(
                QuayPlan.west(), task, List.of("Mon 13 Apr " + opened), List.of("Mon 13 Apr " + shut), hours);
    }

    @Test
    void what_is_past_is_not_compared() {
        Forecast morning = rainAt(Set.of(at(MONDAY, "09:00"), at(MONDAY, "10:00")));
        var asked = new ForecastChange.Asked(shown, quay, own, morning, List.of());

        var fromTen = ForecastChange.of(Speech.ENGLISH, asked, at(MONDAY, "10:00"));

        assertThat(fromTen.walls().getFirst().shut()).containsExactly("Mon 13 Apr 10:00 to 11:00");
    }

    @Test
    void the_same_forecast_changes_nothing() {
        ForecastChange change = change(own, own, List.of());

        assertThat(change.walls()).isEmpty();
        assertThat(change.same()).isEqualTo(4);
        assertThat(change.breaks()).isEmpty();
    }

    @Test
    void a_published_visit_that_it_now_rains_on_breaks_by_wall_cause_and_hour_and_the_other_way_round_holds_again() {
        var plan = Planner.standard().plan(shown.folder(), new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        List<Visit> there = plan.visits().stream()
                .filter(visit -> visit.facade().site().equals(quay.id()))
                .toList();
        Visit install = there.stream()
                .filter(visit -> visit.task() == Task.INSTALL)
                .filter(visit -> visit.end().isBefore(own.end()))
                .findFirst()
                .orElseThrow();
        Instant hour = install.start().truncatedTo(ChronoUnit.HOURS);
        Forecast wet = rainAt(Set.of(at(MONDAY, "12:00"), at(MONDAY, "13:00"), hour));

        ForecastChange worse = change(own, wet, there);
        ForecastChange better = change(wet, own, there);

        var row = new VisitRow(
                install.opening(),
                Task.INSTALL,
                new VisitTime(LocalDateTime.ofInstant(install.start(), quay.zone()), "W1"),
                "%s, W1".formatted(Speech.ENGLISH.moment(install.start(), quay.zone())),
                "rain on the west wall from %s".formatted(Speech.ENGLISH.clock(hour, quay.zone())));
        assertThat(worse.breaks()).contains(row);
        assertThat(worse.mends()).isEmpty();
        assertThat(better.mends()).contains(row).isEqualTo(worse.breaks());
        assertThat(better.breaks()).isEmpty();
        assertThat(worse.breaks().size()).as("the rest holds").isLessThan(there.size());
    }

    @Test
    void a_forecast_that_is_over_or_tells_nothing_says_so() {
        Forecast over = new Forecast(quay.id(), own.hours().subList(0, 4));

        assertThat(change(Forecast.none(quay.id()), over, List.of()).notes())
                .containsExactly(
                        "The earlier one tells no hour at all: all counted as open.",
                        "The later forecast ends Mon 13 Apr 04:00: hours after it count as open.",
                        "The later forecast is over.");
    }
}
