package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerClient;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import javax.sql.DataSource;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.springframework.transaction.support.TransactionTemplate;

/** On a PostgreSQL of its own, one job at a time, by the real scheduler. */
class TurnsDbTests {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final List<String> done = new CopyOnWriteArrayList<>();
    private final Semaphore gate = new Semaphore(0);
    private final JobPulse pulse = new JobPulse();
    private BackgroundWork work;
    private JobRuns runs;
    private Scheduler scheduler;

    /** Says what it did, and waits at a gate where its payload says so. */
    private final class Noted implements JobHandler {
        @Override
        public String kind() {
            return "noted";
        }

        @Override
        public void run(Job job) throws InterruptedException {
            if (job.payload().startsWith("gate")) gate.acquire();
            done.add(job.payload());
        }
    }

    @BeforeEach
    void begin() {
        DataSource database = NodeHealthTests.at(TestDatabase.fresh());
        var transaction = new TransactionTemplate(new DataSourceTransactionManager(database));
        DSLContext db = DSL.using(new TransactionAwareDataSourceProxy(database), SQLDialect.POSTGRES);
        Clock clock = Clock.systemUTC();
        var turns = new Turns(db);
        SchedulerClient claims = new SchedulerConfiguration().schedulerClient(database);
        work = new BackgroundWork(db, transaction, clock, claims, turns);
        runs = new JobRuns(
                db,
                transaction,
                clock,
                pulse,
                List.of(new Noted()),
                new JobMeters(db, new SimpleMeterRegistry()),
                turns);
        var settings = new PlatformSettings(
                Path.of("none"),
                "",
                new PlatformSettings.Db(null, null, null),
                new PlatformSettings.Work(1, 3, false, false));
        scheduler = new SchedulerConfiguration().scheduler(database, runs, List.of(), clock, settings);
        scheduler.start();
        ask("gate", "gatekeeper", "gate");
        await().atMost(PATIENCE).until(() -> db.fetchExists(DSL.table("job"), DSL.condition("state = 'running'")));
    }

    @AfterEach
    void end() {
        gate.release(2);
        scheduler.stop();
        pulse.destroy();
    }

    private JobId ask(String payload, String asker, String about) {
        return work.ask("noted", payload, new Asker(asker, about));
    }

    private void open(String... expected) {
        gate.release(2);
        await().atMost(PATIENCE).until(() -> done.size() == expected.length + 1);
        assertThat(done.subList(1, done.size())).containsExactly(expected);
    }

    @Test
    void people_take_turns() {
        ask("a1", "a", "1");
        ask("a2", "a", "2");
        ask("a3", "a", "3");
        ask("b1", "b", "4");
        ask("c1", "c", "5");
        ask("b2", "b", "6");
        open("a1", "b1", "c1", "a2", "b2", "a3");
    }

    @Test
    void who_comes_late_has_no_more_turns_than_the_others() {
        ask("a1", "a", "1");
        ask("gate again", "z", "2");
        ask("a2", "a", "3");
        ask("a3", "a", "4");
        gate.release();
        await().atMost(PATIENCE).until(() -> done.contains("a1"));
        ask("d1", "d", "5");
        ask("d2", "d", "6");
        open("a1", "gate again", "d1", "a2", "d2", "a3");
    }

    @Test
    void folders_take_turns() {
        ask("one of a", "a", "1");
        ask("one of b", "b", "1");
        ask("two of c", "c", "2");
        open("one of a", "two of c", "one of b");
    }

    @Test
    void what_runs_is_its_askers_first() {
        ask("second of the gatekeeper", "gatekeeper", "1");
        ask("first", "a", "2");
        open("first", "second of the gatekeeper");
    }

    @Test
    void what_nobody_asked_for_is_in_nobodys_way() {
        ask("a1", "a", "1");
        ask("a2", "a", "2");
        work.ask("noted", "by itself", new Asker(null, "3"));
        work.ask("noted", "again", new Asker(null, "4"));
        open("a1", "by itself", "again", "a2");
    }

    @Test
    void what_is_withdrawn_gives_its_turn_away() {
        JobId first = ask("a1", "a", "1");
        ask("a2", "a", "2");
        ask("b1", "b", "3");
        ask("b2", "b", "4");
        work.withdraw(first);
        open("a2", "b1", "b2");
    }

    @Test
    void what_a_node_gave_back_goes_on_before_all_others() {
        ask("a1", "a", "1");
        JobId begun = ask("a2", "a", "2");
        runs.run(begun, () -> true);
        ask("b1", "b", "3");
        assertThat(done).containsExactly("a2");
        gate.release();
        await().atMost(PATIENCE).until(() -> done.size() == 5);
        assertThat(done).containsExactly("a2", "gate", "a2", "b1", "a1");
    }
}
