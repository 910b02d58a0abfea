package drylap.whatif;

import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;

/** Rain that comes for sure, or does not come, in the forecast hours at a site that a stretch touches. */
public record OtherRain(SiteId site, TimeWindow when, boolean rains) implements Change {
    /** Where light rain ends and moderate rain begins (AMS glossary, from memory); as in the rain call. */
    private static final double MM = 2.5;

    private static final Duration HOUR = Duration.ofHours(1);

    @Override
    public JobFolder applyTo(JobFolder folder) {
        boolean forecast = folder.forecasts().stream()
                .anyMatch(one -> one.site().equals(site) && one.hours().stream().anyMatch(this::touched));
        if (!forecast) throw CannotBe.NOT_FORECAST.with(site, when.from(), when.until());
        return folder.withForecasts(folder.forecasts().stream()
                .map(one -> one.site().equals(site) ? changed(one) : one)
                .toList());
    }

    private Forecast changed(Forecast one) {
        return new Forecast(
                site,
                one.hours().stream()
                        .map(hour -> touched(hour) ? changed(hour) : hour)
                        .toList());
    }

    private ForecastHour changed(ForecastHour hour) {
        return rains ? Rains.with(hour, Math.max(MM, hour.rainMm()), 1) : Rains.with(hour, 0, 0);
    }

    private boolean touched(ForecastHour hour) {
        return when.overlaps(new TimeWindow(hour.start(), hour.start().plus(HOUR)));
    }
}
