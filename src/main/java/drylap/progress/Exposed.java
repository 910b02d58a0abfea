package drylap.progress;

import drylap.assembly.Step;
import drylap.kernel.Rule;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A layer in the sun, counted for itself: no other layer's days are its own.
 *
 * @param since when its first piece went on; unknown where it was on the wall before the log began
 * @param days whole days since then
 * @param daysLeft whole days until its limit, negative beyond it
 * @param source where the limit comes from
 */
public record Exposed(
        Part part,
        @Nullable Instant since,
        @Nullable Integer days,
        double limitDays,
        @Nullable Integer daysLeft,
        String source) {

    /** What is counted as one: the pieces of a barrier are of one roll. */
    public enum Part {
        APRON("apron", Rule.APRON_UV_DAYS, List.of(Step.APRON)),
        FIRST_BARRIER(
                "first barrier",
                Rule.BARRIER_UV_DAYS,
                List.of(Step.BARRIER_SILL, Step.BARRIER_JAMB, Step.BARRIER_HEAD)),
        SECOND_BARRIER(
                "second barrier", Rule.BARRIER_UV_DAYS, List.of(Step.SECOND_SILL, Step.SECOND_JAMB, Step.SECOND_HEAD));

        private final String words;
        private final Rule limit;
        private final List<Step> placedBy;

        Part(String words, Rule limit, List<Step> placedBy) {
            this.words = words;
            this.limit = limit;
            this.placedBy = placedBy;
        }

        public String words() {
            return words;
        }

        Rule limit() {
            return limit;
        }

        List<Step> placedBy() {
            return placedBy;
        }
    }

    private static final double HOURS_A_DAY = 24;

    static Exposed of(Part part, @Nullable Instant since, double limitDays, Instant now) {
        String source = part.limit().source();
        if (since == null) return new Exposed(part, null, null, limitDays, null, source);
        double days = Duration.between(since, now).toSeconds() / 3600.0 / HOURS_A_DAY;
        return new Exposed(part, since, (int) Math.floor(days), limitDays, (int) Math.floor(limitDays - days), source);
    }

    public Saying saying() {
        var layer = Saying.of(part.words());
        if (daysLeft == null) return Saying.of("{0}: in the sun since before the log, days unknown", layer);
        return daysLeft < 0
                ? Saying.of("{0}: {1} days beyond its {2} days of sun", layer, -daysLeft, Math.round(limitDays))
                : Saying.of("{0}: {1} of {2} days of sun left", layer, daysLeft, Math.round(limitDays));
    }

    public String words() {
        return saying().words();
    }
}
