package drylap.forecasts;

import drylap.kernel.SiteId;
import drylap.platform.Job;
import drylap.platform.JobHandler;
import org.springframework.stereotype.Service;

/** A fetch that a person asked for; done again it asks only for what is newer, so it need not guard its writes. */
@Service
final class FetchJob implements JobHandler {
    static final String KIND = "forecast";

    private final ForecastFetching fetching;

    FetchJob(ForecastFetching fetching) {
        this.fetching = fetching;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public void run(Job job) throws InterruptedException {
        fetching.fetch(new SiteId(job.payload()));
    }
}
