package drylap.forecasts;

import drylap.kernel.SiteId;
import drylap.platform.RegularWork;
import java.time.Clock;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/** Fetches what is due, one site after the other, so that no source is asked for many at once. */
@Service
final class DueFetches implements RegularWork {
    private static final Logger LOG = LoggerFactory.getLogger(DueFetches.class);
    /** Planning waits for a thread meanwhile; what is left is due again a minute later. */
    private static final int MOST_AT_A_TIME = 3;

    private final FetchBook book;
    private final ForecastFetching fetching;
    private final Clock clock;

    DueFetches(FetchBook book, ForecastFetching fetching, Clock clock) {
        this.book = book;
        this.fetching = fetching;
        this.clock = clock;
    }

    @Override
    public String name() {
        return "due-forecasts";
    }

    @Override
    public Duration pause() {
        return Duration.ofMinutes(1);
    }

    @Override
    public void run() {
        for (SiteId site : book.due(clock.instant(), MOST_AT_A_TIME)) {
            try {
                fetching.fetch(site);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                return;
            } catch (RuntimeException failure) {
                LOG.error("The forecast of site {} could not be fetched", site, failure);
            }
        }
    }
}
