package drylap.faults;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import java.util.Random;

/** What everybody who works in the trial stands on, and how they come again when there is no answer. */
final class Ground {
    private static final Duration BEFORE_NEXT_TRY = Duration.ofMillis(300);
    /** Whoever has had no answer for so long gives up. */
    private static final Duration MOST_TRYING = Duration.ofSeconds(100);

    private final Cluster cluster;
    private final Book book;
    private final Program program;
    private final Setting setting;
    private volatile boolean ended;

    Ground(Cluster cluster, Book book, Program program, Setting setting) {
        this.cluster = cluster;
        this.book = book;
        this.program = program;
        this.setting = setting;
    }

    /** Something asked of a web node; no answer, or one that is none, is an {@link IOException}. */
    @FunctionalInterface
    interface Question<T> {
        T ask(int node) throws IOException, InterruptedException;
    }

    Cluster cluster() {
        return cluster;
    }

    Book book() {
        return book;
    }

    Program program() {
        return program;
    }

    Setting setting() {
        return setting;
    }

    TrialNode web(int node) {
        return cluster.webs.get(node);
    }

    static int some(Random draw) {
        return draw.nextInt(Cluster.WEBS);
    }

    /** Asks one node after the other until there is an answer; nothing where none came for long. */
    <T> Optional<T> untilAnswered(int first, Question<T> question) throws InterruptedException {
        long begun = System.nanoTime();
        for (int node = first;
                !ended && System.nanoTime() - begun < MOST_TRYING.toNanos();
                node = (node + 1) % Cluster.WEBS) {
            try {
                return Optional.of(question.ask(node));
            } catch (IOException noAnswer) {
                noAnswer(noAnswer);
            }
        }
        return Optional.empty();
    }

    void noAnswer(Exception failure) throws InterruptedException {
        book.trouble(failure);
        Thread.sleep(BEFORE_NEXT_TRY);
    }

    void end() {
        ended = true;
    }
}
