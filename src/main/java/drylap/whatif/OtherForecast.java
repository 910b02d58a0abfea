package drylap.whatif;

import drylap.planning.JobFolder;
import drylap.weather.Forecast;
import java.util.List;

/** Another forecast for all sites. */
public record OtherForecast(List<Forecast> forecasts) implements Change {
    public OtherForecast {
        forecasts = List.copyOf(forecasts);
    }

    @Override
    public JobFolder applyTo(JobFolder folder) {
        return folder.withForecasts(forecasts);
    }
}
