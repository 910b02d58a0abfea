package drylap.platform;

import static drylap.persistence.jooq.Tables.SCHEDULED_TASKS;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.SchedulerName;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import javax.sql.DataSource;
import org.jooq.DSLContext;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;

/** db-scheduler, wired by hand: its own starter is for an older Spring Boot and stays silent with this one. */
@Configuration(proxyBeanMethods = false)
class SchedulerConfiguration {
    private static final Duration POLL_EVERY = Duration.ofMillis(500);
    private static final Duration SHUTDOWN_WAIT = Duration.ofSeconds(15);
    private static final int MISSED_HEARTBEATS = 4;
    /** It looks for more when so many of its threads are free, and takes no more than it has threads: what it has taken keeps the turn that it had then. */
    private static final double FREE = 0.5;

    private static final double AT_ONCE = 1;

    /** Joins the caller's transaction, so that a job and what it is about are committed together. */
    @Bean
    @Primary
    SchedulerClient schedulerClient(DataSource dataSource) {
        return SchedulerClient.Builder.create(new TransactionAwareDataSourceProxy(dataSource))
                .enablePriority()
                .build();
    }

    /** Stopped by {@link SchedulerStart}, before pages are waited for. */
    @Bean(destroyMethod = "")
    Scheduler scheduler(
            DataSource dataSource, JobRuns runs, List<RegularWork> regular, Clock clock, PlatformSettings settings) {
        return Scheduler.create(dataSource, List.of(JobTask.of(runs)))
                .startTasks(
                        settings.work().regular()
                                ? regular.stream().map(RegularTask::of).toList()
                                : List.of())
                .clock(clock::instant)
                .enablePriority()
                .schedulerName(new SchedulerName.Fixed(NodeName.OURS))
                .threads(Math.max(1, settings.work().threads()))
                .pollingInterval(POLL_EVERY)
                .pollUsingFetchAndLockOnExecute(FREE, AT_ONCE)
                .heartbeatInterval(Duration.ofSeconds(settings.work().heartbeatSeconds()))
                .missedHeartbeatsLimit(MISSED_HEARTBEATS)
                .shutdownMaxWait(SHUTDOWN_WAIT)
                .build();
    }

    @Bean
    SchedulerStart schedulerStart(Scheduler scheduler, Database database, DSLContext db, PlatformSettings settings) {
        return new SchedulerStart(scheduler, database, db, settings.work().threads() > 0);
    }

    record SchedulerStart(Scheduler scheduler, Database database, DSLContext db, boolean works) {
        @EventListener(ApplicationReadyEvent.class)
        void start() {
            if (!works) return;
            if (!database.shared()) releaseClaims();
            scheduler.start();
        }

        /** The first thing when a node is asked to stop, once it says so to who asks for its health: its jobs go on elsewhere while it still answers what it was asked. */
        @Order(Ordered.HIGHEST_PRECEDENCE + 1)
        @EventListener(ContextClosedEvent.class)
        void stop() {
            if (works) scheduler.stop();
        }

        /** Nobody else works on a database of our own: whoever held these claims is dead, and we need not wait to be sure. */
        private void releaseClaims() {
            db.update(SCHEDULED_TASKS)
                    .set(SCHEDULED_TASKS.PICKED, false)
                    .setNull(SCHEDULED_TASKS.PICKED_BY)
                    .setNull(SCHEDULED_TASKS.LAST_HEARTBEAT)
                    .where(SCHEDULED_TASKS.PICKED)
                    .execute();
        }
    }
}
