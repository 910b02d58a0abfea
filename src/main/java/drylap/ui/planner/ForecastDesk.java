package drylap.ui.planner;

import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFetches;
import drylap.forecasts.KeptForecasts;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SiteForecast;
import drylap.weather.Forecast;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Service;

/** Where the forecasts of a folder's sites come from, as far as a person may see and choose it. */
@Service
final class ForecastDesk {
    private final ForecastChoices choices;
    private final KeptForecasts kept;
    private final ForecastFetches fetches;
    private final Clock clock;

    ForecastDesk(ForecastChoices choices, KeptForecasts kept, ForecastFetches fetches, Clock clock) {
        this.choices = choices;
        this.kept = kept;
        this.fetches = fetches;
        this.clock = clock;
    }

    Map<SiteId, SiteForecast> forecasts(Person who, FolderShown shown) {
        Map<SiteId, SiteForecast> all = new LinkedHashMap<>();
        for (Site site : shown.folder().sites()) {
            Forecast forecast = shown.folder().forecasts().stream()
                    .filter(one -> one.site().equals(site.id()))
                    .findFirst()
                    .orElseGet(() -> Forecast.none(site.id()));
            var facts = new SiteForecast.Facts(
                    site,
                    choices.of(who, site.id()),
                    kept.inUse(who, site, forecast),
                    fetches.of(who, site.id()),
                    forecast);
            all.put(site.id(), SiteForecast.of(facts, clock.instant()));
        }
        return all;
    }

    boolean mayChoose(Person who, SiteId site) {
        return who.may(Operation.CHOOSE_FORECAST, site);
    }

    ForecastChoice choice(Person who, SiteId site) {
        return choices.of(who, site);
    }

    ForecastChoiceResult choose(Person who, ForecastChoice wanted) {
        return choices.choose(who, wanted);
    }

    /** Answers no where the source asked not to be asked yet. */
    boolean fetch(Person who, SiteId site) {
        return fetches.now(who, site);
    }
}
