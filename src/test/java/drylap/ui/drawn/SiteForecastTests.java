package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.forecasts.FetchOutcome;
import drylap.forecasts.FetchState;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.KeptForecast;
import drylap.forecasts.Payload;
import drylap.forecasts.ReadForecast;
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
                new SiteForecast.Facts(
                        Payload.QUAY, choice, Optional.ofNullable(used), Optional.ofNullable(state), forecast),
                NOON);
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
