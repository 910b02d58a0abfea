package drylap.platform;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;

/** The one thread that looks into the database for all jobs of this node, so that their own threads only work. */
@Service
final class JobPulse implements DisposableBean {
    private static final Logger LOG = LoggerFactory.getLogger(JobPulse.class);
    private static final long EVERY_MS = 250;

    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().name("job-pulse").daemon().factory());

    Future<?> of(JobAttempt attempt) {
        return thread.scheduleWithFixedDelay(() -> beat(attempt), EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
    }

    /** A database that does not answer for a moment is no reason to give a job up. */
    private static void beat(JobAttempt attempt) {
        try {
            attempt.beat();
        } catch (RuntimeException failure) {
            LOG.warn(
                    "Job {} cannot be looked after for the moment: {}",
                    attempt.id().value(),
                    failure.getMessage());
        }
    }

    @Override
    public void destroy() {
        thread.shutdown();
    }
}
