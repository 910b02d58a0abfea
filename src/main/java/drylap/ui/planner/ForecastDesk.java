package drylap.ui.planner;

import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFetches;
import drylap.forecasts.ForecastFiles;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.KeptForecasts;
import drylap.forecasts.ReadForecast;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.ExposureSheet;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ForecastFile;
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
    private final ForecastFiles files;
    private final LastingDesk lasting;
    private final Clock clock;

    ForecastDesk(
            ForecastChoices choices,
            KeptForecasts kept,
            ForecastFetches fetches,
            ForecastFiles files,
            LastingDesk lasting,
            Clock clock) {
        this.choices = choices;
        this.kept = kept;
        this.fetches = fetches;
        this.files = files;
        this.lasting = lasting;
        this.clock = clock;
    }

    Map<SiteId, SiteForecast> forecasts(Speech say, Person who, FolderShown shown) {
        Map<SiteId, SiteForecast> all = new LinkedHashMap<>();
        for (Site site : shown.folder().sites()) {
            Forecast forecast = shown.folder().forecast(site.id());
            var facts = new SiteForecast.Facts(
                    site,
                    choices.of(who, site.id()),
                    kept.inUse(who, site, forecast),
                    fetches.of(who, site.id()),
                    forecast,
                    lasting.of(who, site),
                    shown.folder().rules().at(site.id()).value(Rule.RAIN_PERSISTENCE));
            all.put(site.id(), SiteForecast.of(say, facts, clock.instant()));
        }
        return all;
    }

    LastingDesk lasting() {
        return lasting;
    }

    /** What the coming forecast drives on to the site's walls. */
    ExposureSheet exposure(Speech say, Person who, FolderShown shown, SiteId site) {
        who.demand(Operation.SEE_OPEN_HOURS, site);
        return ExposureSheet.of(say, shown, site, clock.instant());
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

    ForecastReading look(Person who, Site site, byte[] bytes) {
        return files.look(who, site, bytes);
    }

    ForecastFile file(Speech say, ReadForecast read, Site site, Rules rules) {
        return ForecastFile.of(say, read, site, rules, clock.instant());
    }

    ForecastChoiceResult use(Person who, Site site, ReadForecast read, ForecastChoice seen) {
        return files.use(who, site, read, seen);
    }

    /** Answers no where the source asked not to be asked yet. */
    boolean fetch(Person who, SiteId site) {
        return fetches.now(who, site);
    }
}
