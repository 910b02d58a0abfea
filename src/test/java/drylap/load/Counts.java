package drylap.load;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.HdrHistogram.Histogram;

/** What was asked, how long each answer took, and what went wrong. */
final class Counts {
    private static final long LONGEST_US = Duration.ofMinutes(10).toNanos() / 1_000;
    private static final int DIGITS = 3;
    private static final int MOST_REASONS = 20;

    private final Map<Kind, One> all = new EnumMap<>(Kind.class);
    private final Map<String, Integer> reasons = new TreeMap<>();

    private static final class One {
        final Histogram times = new Histogram(LONGEST_US, DIGITS);
        long refused;
        long errors;
    }

    /** An answer that was hoped for. */
    synchronized void answered(Kind kind, long nanos) {
        of(kind).times.recordValue(Math.clamp(nanos / 1_000, 0, LONGEST_US));
    }

    /** An answer that says no for a reason of the trade, as it must: no error. */
    synchronized void refused(Kind kind, long nanos) {
        answered(kind, nanos);
        of(kind).refused++;
    }

    synchronized void failed(Kind kind, String why) {
        of(kind).errors++;
        String reason = kind.words() + ": " + why;
        if (reasons.size() < MOST_REASONS || reasons.containsKey(reason)) reasons.merge(reason, 1, Integer::sum);
    }

    private One of(Kind kind) {
        return all.computeIfAbsent(kind, _ -> new One());
    }

    synchronized long errors() {
        return all.values().stream().mapToLong(one -> one.errors).sum();
    }

    /** Somebody was answered, and nothing went wrong. */
    synchronized boolean good() {
        return errors() == 0 && all.values().stream().anyMatch(one -> one.times.getTotalCount() > 0);
    }

    /** As a table of Markdown, then each reason of an error with how often it came. */
    synchronized String table() {
        var text = new StringBuilder(
                "| Request | Answers | Refused | Errors | p50, ms | p95, ms | p99, ms | Longest, ms |\n");
        text.append("|---|---:|---:|---:|---:|---:|---:|---:|\n");
        all.forEach((kind, one) -> text.append(row(kind, one)));
        reasons.forEach((reason, times) -> text.append("error, %,d times: %s%n".formatted(times, reason)));
        return text.toString();
    }

    private static String row(Kind kind, One one) {
        return String.format(
                Locale.ROOT,
                "| %s | %,d | %,d | %,d | %s | %s | %s | %s |%n",
                kind.words(),
                one.times.getTotalCount(),
                one.refused,
                one.errors,
                ms(one.times.getValueAtPercentile(50)),
                ms(one.times.getValueAtPercentile(95)),
                ms(one.times.getValueAtPercentile(99)),
                ms(one.times.getMaxValue()));
    }

    private static String ms(long micros) {
        return String.format(Locale.ROOT, "%,.0f", micros / 1e3);
    }
}
