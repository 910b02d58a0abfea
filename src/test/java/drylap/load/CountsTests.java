package drylap.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The sums of the trial, and that it fails where the node does. */
class CountsTests {
    /** Of 1 to 100 ms the nearest rank of p50 is 50, of p95 95, of p99 99 (definition of percentiles by nearest rank). */
    @Test
    void percentiles_are_those_of_the_nearest_rank() {
        Counts counts = new Counts();
        LongStream.rangeClosed(1, 100).forEach(ms -> counts.answered(Kind.DAY, ms * 1_000_000));
        counts.refused(Kind.MARKS, 7_000_000);

        assertThat(counts.table())
                .contains("| stops of the day (/api/day) | 100 | 0 | 0 | 50 | 95 | 99 | 100 |")
                .contains("| batch of marks (/api/marks) | 1 | 1 | 0 | 7 | 7 | 7 | 7 |");
        assertThat(counts.good()).isTrue();
    }

    @Test
    void nothing_answered_is_not_good() {
        assertThat(new Counts().good()).isFalse();
    }

    @Test
    void a_node_that_answers_500_makes_the_trial_fail_and_says_how_often() throws Exception {
        HttpServer broken = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        broken.createContext("/", exchange -> {
            try (exchange) {
                exchange.sendResponseHeaders(500, -1);
            }
        });
        broken.start();
        Counts counts = new Counts();
        counts.answered(Kind.DAY, 1);
        try (var http = HttpClient.newHttpClient()) {
            var address = URI.create(
                    "http://127.0.0.1:%d/".formatted(broken.getAddress().getPort()));
            var ground = new Ground(
                    http,
                    address,
                    1,
                    Duration.ZERO,
                    List.of("O-1"),
                    new ConcurrentLinkedQueue<>(),
                    counts,
                    new Ask(counts));
            for (Worker one : List.of(
                    new Scheduler(ground, "s", new Pushes()),
                    new CrewPhone(ground, "c"),
                    new FollowOn(ground, "f", new Pushes()))) {
                tried(one::comeIn);
                tried(() -> one.act(new Random(1)));
            }
        } finally {
            broken.stop(0);
        }

        assertThat(counts.good()).isFalse();
        assertThat(counts.table())
                .contains("error, 3 times: sign in: answered with 500")
                .contains("error, 1 times: week sheet, from address to drawn: answered with 500");
    }

    private interface Step {
        void go() throws IOException, InterruptedException;
    }

    private static void tried(Step step) throws InterruptedException {
        try {
            step.go();
        } catch (IOException counted) {
            // it is in the counts, as the trial has it
        }
    }

    /** As {@code jcmd GC.heap_info} of Temurin 25 writes it for G1. */
    @Test
    void the_heap_is_the_first_size_that_jcmd_tells() throws IOException {
        assertThat(Heap.usedIn("""
                        4242:
                         garbage-first heap   total reserved 2097152K, committed 262144K, used 102400K [0x0000000080000000, 0x0000000100000000)
                          region size 1M, 3 eden (3M), 1 survivor (1M), 20 old (20M)
                         Metaspace       used 190000K, committed 191000K, reserved 1245184K
                        """)).isEqualTo(100);
    }

    @Test
    void what_is_asked_for_is_read_or_refused_with_what_would_be_accepted() {
        assertThat(LoadWish.of("--minutes", "3").time()).isEqualTo(Duration.ofMinutes(3));
        assertThat(LoadWish.of().people()).isEqualTo(200);
        assertThat(LoadWish.of("--tenth").openings()).isEqualTo(300);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadWish.of("--minutes", "soon"))
                .withMessageContaining("--minutes: soon; accepted: a whole number from 1 to 1440");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadWish.of("--people"))
                .withMessageContaining("--people is not known; accepted: --minutes N");
    }

    /** Of an exponential distribution 1 - 1/e lie below the mean (any textbook of statistics). */
    @Test
    void pauses_are_exponential() {
        Random draw = new Random(1);
        int below = 0;
        for (int i = 0; i < 10_000; i++) if (Think.of(draw).compareTo(Think.MEAN) < 0) below++;
        assertThat(below / 10_000.0).isBetween(0.61, 0.65);
    }
}
