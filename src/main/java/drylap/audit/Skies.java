package drylap.audit;

import drylap.kernel.FacadeId;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.weather.Forecast;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** The sky of every site and the hours of every wall. */
final class Skies {
    private final Map<SiteId, SiteSky> sites = new HashMap<>();
    private final Map<FacadeId, WallHours> walls = new HashMap<>();

    Skies(JobBook book) {
        JobFolder folder = book.folder();
        Map<SiteId, Forecast> forecasts = new HashMap<>();
        folder.forecasts().forEach(forecast -> forecasts.put(forecast.site(), forecast));
        folder.sites().forEach(site -> {
            Forecast forecast = forecasts.getOrDefault(site.id(), Forecast.none(site.id()));
            sites.put(site.id(), new SiteSky(site, forecast, rulesAt(folder, site.id())));
        });
        for (Facade facade : folder.facades())
            walls.put(
                    facade.id(),
                    new WallHours(
                            facade,
                            over(facade.id().site()),
                            rulesAt(folder, facade.id().site())));
    }

    private static Rules rulesAt(JobFolder folder, SiteId site) {
        return SiteRules.at(folder.rules(), site);
    }

    SiteSky over(SiteId site) {
        return Objects.requireNonNull(sites.get(site), () -> "no site " + site);
    }

    WallHours at(FacadeId facade) {
        return Objects.requireNonNull(walls.get(facade), () -> "no facade " + facade);
    }
}
