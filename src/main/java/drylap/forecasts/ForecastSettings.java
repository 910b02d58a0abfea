package drylap.forecasts;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How the sources are asked.
 *
 * @param userAgent who asks, with a way to reach them: the US service and MET Norway refuse whoever does not say
 * @param csv where forecast files of one's own lie, with {@code {site}} for the site's id; blank where there are none
 * @param connect how long to wait for a connection
 * @param whole how long to wait for a whole answer
 */
@ConfigurationProperties("drylap.forecasts")
public record ForecastSettings(
        @DefaultValue("Drylap/0.1.0") String userAgent,
        @DefaultValue("https://api.weather.gov") String usWeatherService,
        @DefaultValue("https://api.open-meteo.com") String openMeteo,
        @DefaultValue("https://api.met.no") String metNorway,
        @DefaultValue("") String csv,
        @DefaultValue("10s") Duration connect,
        @DefaultValue("30s") Duration whole) {
    /** The address under which a source is asked; blank where there is none. */
    public String base(ForecastSource source) {
        return switch (source) {
            case US_WEATHER_SERVICE -> usWeatherService;
            case OPEN_METEO -> openMeteo;
            case MET_NORWAY -> metNorway;
            case CSV -> csv;
            case UPLOAD -> "";
        };
    }
}
