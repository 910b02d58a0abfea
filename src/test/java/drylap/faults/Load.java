package drylap.faults;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** What people and programs do, without a pause, on whichever node answers; each in its own way of coming again after a fault. */
final class Load implements AutoCloseable {
    private static final Duration BETWEEN = Duration.ofMillis(120);
    private static final Duration BEFORE_NEXT_TRY = Duration.ofMillis(300);
    private static final int LINES_OF_A_BATCH = 3;
    /** Whoever has had no answer for so long gives up. */
    private static final Duration MOST_TRYING = Duration.ofSeconds(100);

    private final Cluster cluster;
    private final Book book;
    private final Program program;
    private final Setting setting;
    private final List<Program.Page> pages;
    private final List<Thread> threads = new ArrayList<>();
    private final AtomicInteger nextOpening = new AtomicInteger();
    private final AtomicInteger nextImport = new AtomicInteger();
    private final AtomicLong nextRun = new AtomicLong(1_800_000);
    private volatile boolean running = true;
    private volatile boolean paused;
    private final AtomicInteger busy = new AtomicInteger();

    Load(Cluster cluster, Book book, Program program, Setting setting) {
        this.cluster = cluster;
        this.book = book;
        this.program = program;
        this.setting = setting;
        pages = cluster.webs.stream().map(Program.Page::new).toList();
    }

    /** One thing to do, and whether there was anything to do. */
    private interface Work {
        void once(Random draw) throws Exception;
    }

    void begin() {
        go("marks", 1, this::mark);
        go("more-marks", 2, this::mark);
        go("phone", 3, this::sendAgain);
        go("publisher", 4, this::publish);
        go("imports", 5, this::bringIn);
    }

    private void go(String name, long seed, Work work) {
        Random draw = new Random(seed);
        threads.add(Thread.ofPlatform().daemon().name(name).start(() -> live(work, draw)));
    }

    private void live(Work work, Random draw) {
        while (running) {
            if (!paused) {
                busy.incrementAndGet();
                try {
                    if (!paused) work.once(draw);
                } catch (Exception noAnswer) {
                    book.trouble(noAnswer);
                    pause(BEFORE_NEXT_TRY);
                } finally {
                    busy.decrementAndGet();
                }
            }
            pause(BETWEEN);
        }
    }

    private static void pause(Duration time) {
        try {
            Thread.sleep(time);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits until everything that was begun has been answered or given up. */
    void rest() throws InterruptedException {
        paused = true;
        long begun = System.nanoTime();
        while (busy.get() > 0 && System.nanoTime() - begun < TimeUnit.MINUTES.toNanos(5)) Thread.sleep(50);
        if (busy.get() > 0) throw new IllegalStateException("some operations never come to an end");
    }

    void goOn() {
        paused = false;
    }

    private boolean trying(long begun) {
        return running && System.nanoTime() - begun < MOST_TRYING.toNanos();
    }

    private int some(Random draw) {
        return draw.nextInt(Cluster.WEBS);
    }

    /** A mark by another program: sent again with its key, to whichever node, until there is an answer. */
    private void mark(Random draw) throws Exception {
        String opening = setting.opening(nextOpening.getAndIncrement());
        String path = "/api/v1/folders/%d/openings/%s".formatted(setting.marked(), opening);
        var seen = program.get(cluster.webs.get(some(draw)), path);
        if (seen.status() != 200) throw new IOException("reading is answered with " + seen.status());
        String line = nextLine(seen.json());
        if (line == null) return;
        String name = Names.mark(setting.marked(), opening, line);
        String key = UUID.randomUUID().toString();
        book.ask(name);
        for (long begun = System.nanoTime(); trying(begun); ) {
            int node = some(draw);
            try {
                var answer = program.post(cluster.webs.get(node), path + "/marks", key, seen.etag(), done(line));
                if (answer.status() < 300) book.confirm(name, node);
                if (answer.status() < 500) return;
            } catch (IOException noAnswer) {
                book.trouble(noAnswer);
            }
            pause(BEFORE_NEXT_TRY);
        }
    }

    private static String done(String line) {
        return "{\"line\":\"%s\",\"kind\":\"done\",\"markedAt\":\"%s\"}"
                .formatted(line, Instant.now().minusSeconds(1));
    }

    private static @Nullable String nextLine(JsonNode opening) {
        for (JsonNode line : opening.path("lines"))
            if (line.path("next").asBoolean() && ofWindowCrew(line))
                return line.path("line").stringValue();
        return null;
    }

    private static boolean ofWindowCrew(JsonNode line) {
        return line.path("trade").stringValue().equals("window")
                && !line.path("release").asBoolean()
                && !line.path("done").asBoolean();
    }

    /** A phone's marks of a wall without a connection: the same batch three times, twice of them at once on two nodes. */
    private void sendAgain(Random draw) throws Exception {
        String opening = setting.opening(nextOpening.getAndIncrement());
        var seen = program.get(
                cluster.webs.get(some(draw)), "/api/v1/folders/%d/openings/%s".formatted(setting.marked(), opening));
        if (seen.status() != 200) throw new IOException("reading is answered with " + seen.status());
        List<String> lines = new ArrayList<>();
        for (JsonNode line : seen.json().path("lines"))
            if (ofWindowCrew(line) && lines.size() < LINES_OF_A_BATCH)
                lines.add(line.path("line").stringValue());
        if (lines.isEmpty()) return;
        Batch batch = Batch.of(setting.marked(), opening, lines);
        batch.names().forEach(book::ask);
        try (var both = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<?>> sent = new ArrayList<>();
            for (int node = 0; node < Cluster.WEBS; node++) {
                int to = node;
                sent.add(both.submit(() -> send(batch, to)));
            }
            for (Future<?> one : sent) one.get();
        }
        send(batch, some(draw));
    }

    private void send(Batch batch, int first) {
        long begun = System.nanoTime();
        for (int tries = 0; trying(begun); tries++) {
            int node = (first + tries) % Cluster.WEBS;
            try {
                batch.confirmed(pages.get(node).marks(batch.json())).forEach(name -> book.confirm(name, node));
                return;
            } catch (IOException noAnswer) {
                book.trouble(noAnswer);
                pause(BEFORE_NEXT_TRY);
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    /** Two people publish at once, on two nodes, in the place of the same publication: it may be given to one only. */
    private void publish(Random draw) throws Exception {
        Long seen = setting.seen();
        var together = new CountDownLatch(Cluster.WEBS);
        long won;
        try (var both = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<Integer>> sent = new ArrayList<>();
            for (int node = 0; node < Cluster.WEBS; node++) sent.add(both.submit(publishing(node, seen, together)));
            int sum = 0;
            for (Future<Integer> one : sent) sum += one.get();
            won = sum;
        }
        if (won > 1) book.confirm("one place given to %d people, after %s".formatted(won, seen), 0);
        pause(Duration.ofSeconds(1));
    }

    private Callable<Integer> publishing(int node, @Nullable Long seen, CountDownLatch together) {
        long folder = setting.planned();
        long plan = setting.plan(node);
        return () -> {
            book.ask(Names.publish(folder, seen, plan));
            book.ask(Names.takePlace(folder, seen));
            together.countDown();
            together.await();
            try {
                String answer = program.ask(
                        cluster.webs.get(node), "/publish?folder=%d&plan=%d&seen=%s".formatted(folder, plan, seen));
                Long newer = Program.numberAfter("meanwhile ", answer);
                if (newer != null) setting.saw(newer);
                Long mine = Program.numberAfter("published ", answer);
                if (mine == null) return 0;
                setting.saw(mine);
                book.confirm(Names.publish(folder, seen, plan), node);
                book.confirm(Names.takePlace(folder, seen), node);
                return 1;
            } catch (IOException noAnswer) {
                book.trouble(noAnswer);
                pause(BEFORE_NEXT_TRY);
                return 0;
            }
        };
    }

    /** A whole folder, or nothing of it. */
    private void bringIn(Random draw) throws Exception {
        int number = nextImport.getAndIncrement();
        int openings = 8 + number % 40;
        String name = "trial-%d".formatted(number);
        int node = some(draw);
        book.ask(Names.bringIn(name, openings));
        program.ask(cluster.webs.get(node), "/import?name=%s&openings=%d&seed=%d".formatted(name, openings, number));
        book.confirm(Names.bringIn(name, openings), node);
        pause(Duration.ofSeconds(2));
    }

    /** Asks for a run of half an hour; the one before ends. */
    long askRun(long folder) throws InterruptedException {
        long begun = System.nanoTime();
        for (int tries = 0; trying(begun); tries++) {
            long ms = nextRun.getAndIncrement();
            int node = tries % Cluster.WEBS;
            String name = Names.run(folder, ms);
            book.ask(name);
            try {
                long run = Long.parseLong(
                        program.ask(cluster.webs.get(node), "/run?folder=%d&ms=%d".formatted(folder, ms)));
                book.confirm(name, node);
                return run;
            } catch (IOException noAnswer) {
                book.trouble(noAnswer);
                pause(BEFORE_NEXT_TRY);
            }
        }
        throw new IllegalStateException("no node takes a run");
    }

    @Override
    public void close() throws InterruptedException {
        running = false;
        for (Thread thread : threads) thread.join(Duration.ofSeconds(30));
    }
}
