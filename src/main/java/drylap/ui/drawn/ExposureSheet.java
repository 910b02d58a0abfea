package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Speech;
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

    public static ExposureSheet of(Speech say, FolderShown shown, SiteId id, Instant now) {
        Site site = shown.site(id);
        Forecast forecast = shown.folder().forecast(id);
        List<WallExposure> walls = shown.folder().facades().stream()
                .filter(facade -> facade.id().site().equals(id))
                .map(facade -> WallExposure.of(facade, setting(shown, site, facade), forecast, now))
                .toList();
        boolean dry = walls.stream().allMatch(wall -> wall.hours().isEmpty());
        return new ExposureSheet(
                odds(say, shown, id, forecast, now),
                dry
                        ? List.of()
                        : walls.stream()
                                .sorted((one, other) -> Double.compare(
                                        other.total().iso(), one.total().iso()))
                                .map(wall -> line(say, wall, walls, site))
                                .toList(),
                walls.isEmpty() ? "" : assumed(say, walls.getFirst().setting(), site));
    }

    private static WallSetting setting(FolderShown shown, Site site, Facade facade) {
        int levels = shown.folder().openings().stream()
                .filter(opening -> opening.facade().equals(facade.id()))
                .mapToInt(Opening::level)
                .max()
                .orElse(1);
        return WallSetting.of(site.terrain(), levels, shown.folder().rules().at(site.id()));
    }

    private static String odds(Speech say, FolderShown shown, SiteId id, Forecast forecast, Instant now) {
        if (!forecast.end().isAfter(now)) return say.it("No forecast from now on.");
        Instant until = forecast.end().isBefore(now.plus(DAY)) ? forecast.end() : now.plus(DAY);
        OddsOfRain odds = shown.weather(id).oddsOfRain(now, until);
        return say.it(
                "Chance of rain until {0}: about {1}; no model can give less than {2} or more than {3}.",
                say.moment(until, shown.site(id).zone()),
                percent(odds.likely()),
                percent(odds.atLeast()),
                percent(odds.atMost()));
    }

    private static Line line(Speech say, WallExposure wall, List<WallExposure> walls, Site site) {
        if (wall.hours().isEmpty())
            return new Line(
                    title(say, wall), say.it("no rain reaches it"), place(say, wall.among(walls)), say.it("no hour"));
        return new Line(
                title(say, wall),
                litres(say, wall.total()),
                place(say, wall.among(walls)),
                wall.wettest()
                        .map(hour ->
                                "%s, %s".formatted(say.moment(hour.start(), site.zone()), litres(say, hour.litres())))
                        .orElseGet(() -> say.it("no hour")));
    }

    private static String title(Speech say, WallExposure wall) {
        return "%s, %s".formatted(wall.facade().id().facade(), say.it(Words.heading(wall.facade())));
    }

    private static String place(Speech say, WallExposure.Place place) {
        return place.first() == place.last()
                ? say.it("{0} of {1} by all three models", place.first(), place.of())
                : say.it("{0} to {1} of {2}, as the models differ", place.first(), place.last(), place.of());
    }

    private static String litres(Speech say, ModelRange range) {
        return say.it("{0} to {1} L/m²", figure(say, range.least()), figure(say, range.most()));
    }

    /** Two figures that count are more than the models know. */
    private static String figure(Speech say, double litres) {
        if (litres < 0.005) return say.it("under 0.01");
        int places = litres < 0.95 ? 2 : litres < 9.5 ? 1 : 0;
        return String.format(Locale.ROOT, "%." + places + "f", litres);
    }

    private static String percent(double chance) {
        return Math.round(100 * chance) + " %";
    }

    private static String assumed(Speech say, WallSetting wall, Site site) {
        return say.it(
                "Taken: terrain {0}, ground upwind rises {1}, nearest obstacle at {2} m (leaves {3}), wall factor {4}, "
                        + "deposition {5}, rain admittance {6}. These are uncertain and can be set for the site on the "
                        + "page of the rules.",
                site.terrain().code(),
                RuleSheet.plain(wall.upwindSlope()),
                RuleSheet.plain(wall.obstacleM()),
                RuleSheet.plain(WallIndex.obstruction(wall.obstacleM())),
                RuleSheet.plain(wall.wallFactor()),
                RuleSheet.plain(wall.deposition()),
                RuleSheet.plain(wall.admittance()));
    }
}
