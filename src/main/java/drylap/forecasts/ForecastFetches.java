package drylap.forecasts;

import drylap.kernel.SiteId;
import drylap.platform.Asker;
import drylap.platform.BackgroundWork;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Clock;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** How fetching goes at a site, and a go at once. */
@Service
public final class ForecastFetches {
    private final FetchBook book;
    private final BackgroundWork work;
    private final Clock clock;

    ForecastFetches(FetchBook book, BackgroundWork work, Clock clock) {
        this.book = book;
        this.work = work;
        this.clock = clock;
    }

    /** Nothing where no source was ever chosen. */
    public Optional<FetchState> of(Person who, SiteId site) {
        who.demand(Operation.SEE_OPEN_HOURS, site);
        return book.state(site);
    }

    /** Fetches in the background; answers no where the source asked to be left alone until later. */
    public boolean now(Person who, SiteId site) {
        who.demand(Operation.CHOOSE_FORECAST, site);
        if (book.leftAlone(site, clock.instant())) return false;
        work.ask(FetchJob.KIND, site.value(), Asker.nobody(site));
        return true;
    }
}
