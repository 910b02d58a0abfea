package drylap.whatif;

import drylap.planning.JobFolder;
import drylap.weather.Forecast;

/** Every hour's rain is more, or less, by so many percent; its chance stays. */
public record RainByPercent(double percent) implements Change {
    public RainByPercent {
        if (!(percent >= -100 && percent <= 1000))
            throw new IllegalArgumentException("rain by %s %%; -100 to 1000 are accepted".formatted(percent));
    }

    @Override
    public JobFolder applyTo(JobFolder folder) {
        return folder.withForecasts(
                folder.forecasts().stream().map(this::changed).toList());
    }

    private Forecast changed(Forecast one) {
        return new Forecast(
                one.site(),
                one.hours().stream()
                        .map(hour -> Rains.with(hour, hour.rainMm() * (1 + percent / 100), hour.rainProbability()))
                        .toList());
    }
}
