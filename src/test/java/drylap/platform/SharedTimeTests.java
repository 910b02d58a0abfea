package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class SharedTimeTests {
    private static final Instant NOON = Instant.parse("2031-03-03T12:00:00Z");
    private static final Duration SECOND = Duration.ofSeconds(1);

    private final AtomicLong nanos = new AtomicLong(77);
    private final AtomicInteger asked = new AtomicInteger();

    private void pass(Duration time) {
        nanos.addAndGet(time.toNanos());
    }

    private SharedTime.Asked answering(Instant answer) {
        return () -> {
            asked.incrementAndGet();
            return answer;
        };
    }

    @Test
    void it_is_as_late_as_the_database_says_and_goes_on_from_there() {
        var time = new SharedTime(answering(NOON), nanos::get);
        assertThat(time.instant()).isEqualTo(NOON);
        pass(SECOND);
        assertThat(time.instant()).isEqualTo(NOON.plus(SECOND));
        assertThat(asked).hasValue(1);
    }

    @Test
    void the_database_is_asked_again_from_time_to_time() {
        var time = new SharedTime(answering(NOON), nanos::get);
        pass(SECOND.multipliedBy(11));
        await().untilAsserted(() -> assertThat(time.instant()).isEqualTo(NOON));
        assertThat(asked).hasValue(2);
    }

    @Test
    void an_answer_is_as_old_as_half_its_way() {
        var time = new SharedTime(
                () -> {
                    pass(SECOND.dividedBy(2));
                    return NOON;
                },
                nanos::get);
        assertThat(time.instant()).isEqualTo(NOON.plusMillis(250));
    }

    @Test
    void an_answer_that_was_long_under_way_says_nothing() {
        var answer = new AtomicInteger();
        var time = new SharedTime(
                () -> {
                    if (answer.getAndIncrement() > 0) pass(SECOND.multipliedBy(2));
                    return NOON;
                },
                nanos::get);
        time.look();
        assertThat(time.instant()).isEqualTo(NOON.plusSeconds(2));
    }

    /** The second answer comes by a quarter of a second late, as an answer on a way of half a second may. */
    @Test
    void an_answer_that_leaves_open_that_it_was_right_turns_nothing_back() {
        var answer = new AtomicInteger();
        var time = new SharedTime(
                () -> {
                    if (answer.getAndIncrement() > 0) pass(SECOND.dividedBy(2));
                    return NOON;
                },
                nanos::get);
        time.look();
        assertThat(time.instant()).isEqualTo(NOON.plusMillis(500));
    }

    @Test
    void without_an_answer_it_goes_on() {
        var answer = new AtomicInteger();
        var time = new SharedTime(
                () -> {
                    if (answer.getAndIncrement() > 0) throw new SQLException("away");
                    return NOON;
                },
                nanos::get);
        pass(Duration.ofHours(1));
        time.look();
        assertThat(time.instant()).isEqualTo(NOON.plus(1, ChronoUnit.HOURS));
    }

    @Test
    void a_postgresql_tells_its_time() throws SQLException {
        String url = TestDatabase.empty();
        var time = SharedTime.of(NodeHealthTests.at(url));
        try (var database = DriverManager.getConnection(url, "postgres", "");
                var statement = database.createStatement();
                var row = statement.executeQuery(
                        "select to_char(clock_timestamp() at time zone 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS\"Z\"')")) {
            row.next();
            assertThat(time.instant()).isCloseTo(Instant.parse(row.getString(1)), within(5, ChronoUnit.SECONDS));
        }
    }
}
