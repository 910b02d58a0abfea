package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ModelRange;
import drylap.weather.OddsOfRain;
import drylap.weather.WallExposure;
import drylap.weather.WallIndex;
import drylap.weather.WallSetting;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * What the coming forecast drives on to each wall of a site, in words.
 *
 * @param odds the chance of rain in the next day, with the bounds that no model can leave
 * @param walls the site's walls, wettest first; none where no rain is forecast to reach any
 * @param assumed what is taken of the walls and their surroundings
 */
public record ExposureSheet(String odds, List<Line> walls, String assumed) {
    public static final String CAUTION =
            "For ranking walls and hours, not a promise of litres; the models can differ by more than a factor of 2.";

    private static final Duration DAY = Duration.ofHours(24);

    /**
     * A wall.
     *
     * @param litres on a square metre, from the least to the most of three models
     * @param place among the walls of the site
     * @param wettest the hour that drives most on to it
     */
    public record Line(String wall, String litres, String place, String wettest) {}

    public static ExposureSheet of(FolderShown shown, SiteId id, Instant now) {
        Site site = shown.site(id);
        Forecast forecast = shown.folder().forecast(id);
        List<WallExposure> walls = shown.folder().facades().stream()
                .filter(facade -> facade.id().site().equals(id))
                .map(facade -> WallExposure.of(facade, setting(shown, site, facade), forecast, now))
                .toList();
        boolean dry = walls.stream().allMatch(wall -> wall.hours().isEmpty());
        return new ExposureSheet(
                odds(shown, id, forecast, now),
                dry
                        ? List.of()
                        : walls.stream()
                                .sorted((one, other) -> Double.compare(
                                        other.total().iso(), one.total().iso()))
                                .map(wall -> line(wall, walls, site))
                                .toList(),
                walls.isEmpty() ? "" : assumed(walls.getFirst().setting(), site));
    }

    private static WallSetting setting(FolderShown shown, Site site, Facade facade) {
        int levels = shown.folder().openings().stream()
                .filter(opening -> opening.facade().equals(facade.id()))
                .mapToInt(Opening::level)
                .max()
                .orElse(1);
        return WallSetting.of(site.terrain(), levels, shown.folder().rules().at(site.id()));
    }

    private static String odds(FolderShown shown, SiteId id, Forecast forecast, Instant now) {
        if (!forecast.end().isAfter(now)) return "No forecast from now on.";
        Instant until = forecast.end().isBefore(now.plus(DAY)) ? forecast.end() : now.plus(DAY);
        OddsOfRain odds = shown.weather(id).oddsOfRain(now, until);
        return "Chance of rain until %s: about %s; no model can give less than %s or more than %s."
                .formatted(
                        Words.moment(until, shown.site(id).zone()),
                        percent(odds.likely()),
                        percent(odds.atLeast()),
                        percent(odds.atMost()));
    }

    private static Line line(WallExposure wall, List<WallExposure> walls, Site site) {
        if (wall.hours().isEmpty())
            return new Line(title(wall), "no rain reaches it", place(wall.among(walls)), "none");
        return new Line(
                title(wall),
                litres(wall.total()),
                place(wall.among(walls)),
                wall.wettest()
                        .map(hour -> "%s, %s".formatted(Words.moment(hour.start(), site.zone()), litres(hour.litres())))
                        .orElse("none"));
    }

    private static String title(WallExposure wall) {
        return "%s, %s".formatted(wall.facade().id().facade(), Words.heading(wall.facade()));
    }

    private static String place(WallExposure.Place place) {
        return place.first() == place.last()
                ? "%d of %d by all three models".formatted(place.first(), place.of())
                : "%d to %d of %d, as the models differ".formatted(place.first(), place.last(), place.of());
    }

    private static String litres(ModelRange range) {
        return "%s to %s L/m²".formatted(figure(range.least()), figure(range.most()));
    }

    /** Two figures that count are more than the models know. */
    private static String figure(double litres) {
        if (litres < 0.005) return "under 0.01";
        int places = litres < 0.95 ? 2 : litres < 9.5 ? 1 : 0;
        return String.format(Locale.ROOT, "%." + places + "f", litres);
    }

    private static String percent(double chance) {
        return Math.round(100 * chance) + " %";
    }

    private static String assumed(WallSetting wall, Site site) {
        return ("Taken: terrain %s, ground upwind rises %s, nearest obstacle at %s m (leaves %s), wall factor %s, deposition %s, "
                        + "rain admittance %s. These are uncertain and can be set for the site on the page of the rules.")
                .formatted(
                        site.terrain().code(),
                        RuleSheet.plain(wall.upwindSlope()),
                        RuleSheet.plain(wall.obstacleM()),
                        RuleSheet.plain(WallIndex.obstruction(wall.obstacleM())),
                        RuleSheet.plain(wall.wallFactor()),
                        RuleSheet.plain(wall.deposition()),
                        RuleSheet.plain(wall.admittance()));
    }
}
