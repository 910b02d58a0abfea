package drylap.forecasts;

import drylap.forecasts.formats.CsvForecast;
import drylap.forecasts.formats.GridpointForecast;
import drylap.forecasts.formats.LocationForecast;
import drylap.forecasts.formats.OpenMeteoForecast;
import drylap.sites.Site;

/** Turns a source's bytes into a forecast for a site; it asks nobody and keeps nothing. */
@FunctionalInterface
public interface ForecastReader {
    /** A longer answer is no forecast of one place. */
    int MOST_BYTES = 8 << 20;

    ForecastReading read(byte[] bytes, Site site);

    static ForecastReader of(ForecastSource source) {
        return switch (source) {
            case US_WEATHER_SERVICE -> GridpointForecast::read;
            case OPEN_METEO -> OpenMeteoForecast::read;
            case MET_NORWAY -> LocationForecast::read;
            case CSV, UPLOAD -> CsvForecast::read;
        };
    }
}
