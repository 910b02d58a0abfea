package drylap.forecasts;

import drylap.kernel.Coded;

/** Where a site's forecast comes from. */
public enum ForecastSource implements Coded {
    US_WEATHER_SERVICE("us-weather-service", "US National Weather Service, gridpoint"),
    OPEN_METEO("open-meteo", "Open-Meteo, hourly"),
    MET_NORWAY("met-norway", "MET Norway, Locationforecast"),
    CSV("csv", "Forecast file of your own (CSV)"),
    /** The same columns, brought in by a person. */
    UPLOAD("upload", "Forecast file brought in");

    private final String code;
    private final String words;

    ForecastSource(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    /** Whether it is asked for newer ones. */
    public boolean fetched() {
        return this != UPLOAD;
    }

    /** As a screen names it. */
    public String words() {
        return words;
    }
}
