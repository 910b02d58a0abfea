package drylap.intake.generate;

import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Ten days of hours from the first midnight. Sites of a district share their spells of rain and their wind, which wanders
 * around the south-west; each site has its own amounts. What comes after is beyond the forecast.
 */
final class Weather {
    private static final int HOURS = 10 * 24;

    private Weather() {}

    static List<Forecast> over(Coast coast, List<Site> sites, Dice dice) {
        List<List<Sky>> skies = new ArrayList<>();
        for (int district = 0; district < coast.districts(); district++) skies.add(Sky.run(HOURS, dice.split()));
        List<Forecast> forecasts = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            Site site = sites.get(i);
            forecasts.add(new Forecast(site.id(), hours(skies.get(coast.district(i)), dice.split())));
        }
        return forecasts;
    }

    private static List<ForecastHour> hours(List<Sky> sky, Dice dice) {
        Instant midnight = Season.MONDAY.atStartOfDay(Season.ZONE).toInstant();
        List<ForecastHour> hours = new ArrayList<>();
        for (int h = 0; h < sky.size(); h++) hours.add(sky.get(h).hour(midnight.plusSeconds(3600L * h), h % 24, dice));
        return hours;
    }
}
