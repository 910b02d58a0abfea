package drylap.load;

import java.io.IOException;

/** Asks, and writes down how long that took. */
final class Ask {
    private final Counts counts;

    Ask(Counts counts) {
        this.counts = counts;
    }

    @FunctionalInterface
    interface Question<T> {
        T ask() throws IOException, InterruptedException;
    }

    /**
     * @throws IOException where there was no good answer, which is written down already
     */
    <T> T timed(Kind kind, Question<T> question) throws IOException, InterruptedException {
        long begun = System.nanoTime();
        try {
            T answer = question.ask();
            counts.answered(kind, System.nanoTime() - begun);
            return answer;
        } catch (IOException none) {
            counts.failed(kind, String.valueOf(none.getMessage()));
            throw none;
        }
    }

    /** The same, where an answer may also say no for a reason of the trade. */
    <T> T judged(Kind kind, Question<T> question, java.util.function.Predicate<T> refused)
            throws IOException, InterruptedException {
        long begun = System.nanoTime();
        try {
            T answer = question.ask();
            if (refused.test(answer)) counts.refused(kind, System.nanoTime() - begun);
            else counts.answered(kind, System.nanoTime() - begun);
            return answer;
        } catch (IOException none) {
            counts.failed(kind, String.valueOf(none.getMessage()));
            throw none;
        }
    }

    void failed(Kind kind, String why) {
        counts.failed(kind, why);
    }
}
