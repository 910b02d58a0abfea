package drylap.forecasts;

import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import java.time.Clock;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Forecast files that people bring in for a site. */
@Service
public final class ForecastFiles {
    private final ForecastChoices choices;
    private final KeptForecasts kept;
    private final TransactionTemplate transaction;
    private final Clock clock;

    ForecastFiles(ForecastChoices choices, KeptForecasts kept, TransactionTemplate transaction, Clock clock) {
        this.choices = choices;
        this.kept = kept;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** What the file says, or everything that is wrong with it; nothing is kept yet. */
    public ForecastReading look(Person who, Site site, byte[] bytes) {
        who.demand(Operation.CHOOSE_FORECAST, site.id());
        return ForecastReader.of(ForecastSource.UPLOAD).read(bytes, site);
    }

    /**
     * Keeps the forecast and has the site planned by it, or neither.
     *
     * @param seen the choice that it is put in the place of
     */
    public ForecastChoiceResult use(Person who, Site site, ReadForecast read, ForecastChoice seen) {
        who.demand(Operation.CHOOSE_FORECAST, site.id());
        var wanted =
                new ForecastChoice(site.id(), ForecastSource.UPLOAD, null, seen.everyHours(), seen.version(), "", null);
        return transaction.execute(state -> {
            kept.keep(ForecastSource.UPLOAD, site, read, clock.instant());
            ForecastChoiceResult result = choices.choose(who, wanted);
            if (!(result instanceof ForecastChoiceResult.Chosen)) state.setRollbackOnly();
            return result;
        });
    }
}
