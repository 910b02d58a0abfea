package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.forecasts.FetchOutcome;
import drylap.forecasts.FetchState;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.KeptForecast;
import drylap.forecasts.LastingRain;
import drylap.forecasts.Payload;
import drylap.forecasts.ReadForecast;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Times are those of Seattle, eight hours behind. */
class SiteForecastTests {
    private static final Instant NOON = Instant.parse("2026-11-25T20:00:00Z");
    private static final Forecast HOUR =
            new Forecast(Payload.QUAY.id(), List.of(new ForecastHour(NOON.plusSeconds(3600), 0, 0, 1, 2, 3, 4, 5)));

    private static SiteForecast of(
            @Nullable ForecastSource source,
            @Nullable KeptForecast used,
            @Nullable FetchState state,
            Forecast forecast) {
        var choice = new ForecastChoice(Payload.QUAY.id(), source, null, 2, 1, "P", NOON);
        return SiteForecast.of(
                Speech.ENGLISH,
                new SiteForecast.Facts(
                        Payload.QUAY,
                        choice,
                        Optional.ofNullable(used),
                        Optional.ofNullable(state),
                        forecast,
                        new LastingRain.Unsolved(Saying.of("nothing kept")),
                        0.6),
                NOON);
    }

    private static SiteForecast.Lasting lasting(LastingRain lasting, double persistence) {
        var choice = new ForecastChoice(Payload.QUAY.id(), null, null, 2, 1, "P", NOON);
        return SiteForecast.of(
                        Speech.ENGLISH,
                        new SiteForecast.Facts(
                                Payload.QUAY, choice, Optional.empty(), Optional.empty(), HOUR, lasting, persistence),
                        NOON)
                .lasting();
    }

    @Test
    void how_rain_lasts_stands_beside_what_the_plan_counts_with() {
        var solved = new LastingRain.Solved(0.7231, 0.041, 84, 6, 21, 2, ForecastSource.MET_NORWAY);

        assertThat(lasting(solved, 0.6))
                .isEqualTo(new SiteForecast.Lasting(
                        "Rain lasts here: one hour's rain goes with the next by 0.72 ± 0.04 from 84 tellings of 6 hours by "
                                + "MET Norway, Locationforecast; 2 left out that no model can give; the plan counts with 0.6.",
                        0.72,
                        "84 tellings of 6 hours by MET Norway, Locationforecast"));
        assertThat(lasting(solved, 0.72).offered()).as("taken already").isNull();
        var stubborn = new LastingRain.Solved(0.991, 0.01, 84, 6, 21, 0, ForecastSource.MET_NORWAY);
        assertThat(lasting(stubborn, 0.6).offered())
                .as("the most that the rule accepts")
                .isEqualTo(0.95);
    }

    @Test
    void a_site_whose_source_does_not_tell_says_so() {
        assertThat(lasting(new LastingRain.Unsolved(Saying.of("nothing kept")), 0.55))
                .isEqualTo(new SiteForecast.Lasting(
                        "How rain lasts here is not known (nothing kept); the plan counts with 0.55.", null, ""));
    }

    private static KeptForecast kept(@Nullable Instant issued) {
        var read = new ReadForecast(HOUR, issued, List.of("no gusts told"));
        return new KeptForecast(
                1, ForecastSource.MET_NORWAY, Payload.QUAY.place(), NOON.minus(Duration.ofHours(1)), read);
    }

    @Test
    void a_forecast_in_use_says_its_source_and_its_times() {
        var forecast = of(
                ForecastSource.MET_NORWAY,
                kept(NOON.minus(Duration.ofHours(2))),
                new FetchState(NOON, FetchOutcome.FETCHED, "72 hours", NOON.plusSeconds(7200), null),
                HOUR);

        assertThat(forecast.planned())
                .isEqualTo(
                        "Planned by: MET Norway, Locationforecast, issued Wed 25 Nov 10:00, fetched Wed 25 Nov 11:00; "
                                + "it reaches to Wed 25 Nov 14:00.");
        assertThat(forecast.fetched())
                .isEqualTo("Last fetch Wed 25 Nov 12:00: fetched (72 hours). Next one due Wed 25 Nov 14:00.");
        assertThat(forecast.remarks()).containsExactly("no gusts told");
        assertThat(forecast.waits()).isFalse();
    }

    @Test
    void a_source_without_a_time_of_issue_is_not_given_one() {
        assertThat(of(ForecastSource.MET_NORWAY, kept(null), null, HOUR).planned())
                .contains("no time of issue told, fetched");
    }

    @Test
    void a_site_without_any_forecast_says_so() {
        var nothing = of(null, null, null, Forecast.none(Payload.QUAY.id()));

        assertThat(nothing.planned())
                .isEqualTo("No forecast from now on (the job folder's own): "
                        + "hours are marked beyond the forecast and count as open.");
        assertThat(nothing.fetched()).isEmpty();
    }

    @Test
    void a_source_that_wants_to_be_left_alone_says_until_when() {
        var alone = of(
                ForecastSource.MET_NORWAY,
                null,
                new FetchState(
                        NOON, FetchOutcome.UNANSWERED, "asked too often", NOON.plusSeconds(60), NOON.plusSeconds(60)),
                HOUR);

        assertThat(alone.fetched())
                .isEqualTo("Last fetch Wed 25 Nov 12:00: no answer (asked too often). "
                        + "The source asked not to be asked before Wed 25 Nov 12:01.");
        assertThat(alone.waits()).isTrue();
    }
}
