package drylap.ui.planner;

import drylap.audit.PlanBreaks;
import drylap.kernel.Language;
import drylap.kernel.Reach;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PublicationId;
import drylap.speech.Speech;
import drylap.ui.drawn.BrokenVisits;
import drylap.ui.drawn.FolderShown;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Service;

/**
 * Judges the published plan by the facts of now. With 3,000 openings that takes more than a second, so pages ask for what is
 * at hand and let it be worked out beside them; one answer serves all pages that show the same.
 */
@Service
final class BreaksDesk {
    private static final Duration FRESH = Duration.ofMinutes(1);
    private static final int KEPT = 8;
    /** Of one processor at most one part in so many is spent on it, however fast marks come in. */
    private static final int SPARING = 10;

    private static final Duration LONGEST_REST = Duration.ofSeconds(30);

    private final Clock clock;
    private final Map<Asked, Answer> kept = new LinkedHashMap<>();
    private final LongSupplier nanos;
    private final AtomicLong restedAt;

    private record Asked(PublicationId publication, Reach reach, Language language) {}

    /** @param folder as it stood, which is all that the answer depends on besides the time */
    private record Answer(JobFolder folder, Instant at, BrokenVisits broken) {}

    @Autowired
    BreaksDesk(Clock clock) {
        this(clock, System::nanoTime);
    }

    BreaksDesk(Clock clock, LongSupplier nanos) {
        this.clock = clock;
        this.nanos = nanos;
        restedAt = new AtomicLong(nanos.getAsLong());
    }

    /** The answer that needs no work: nothing is published, or the same was worked out within a minute. */
    Optional<BrokenVisits> atHand(Speech say, FolderShown shown, Reach reach) {
        Asked asked = asked(say, shown, reach);
        if (asked == null) return Optional.of(BrokenVisits.NONE);
        Answer answer = kept(asked);
        return Optional.ofNullable(answer)
                .filter(one -> !one.at().plus(FRESH).isBefore(clock.instant()))
                .filter(one -> one.folder().equals(shown.folder()))
                .map(Answer::broken);
    }

    /** What was worked out last, of a folder that may have changed since: better than nothing until it is worked out anew. */
    Optional<BrokenVisits> lately(Speech say, FolderShown shown, Reach reach) {
        return Optional.ofNullable(asked(say, shown, reach)).map(this::kept).map(Answer::broken);
    }

    /** Waits, where much was worked out just now, until it is time for more. */
    void rest() throws InterruptedException {
        Thread.sleep(Duration.ofNanos(Math.max(0, restedAt.get() - nanos.getAsLong())));
    }

    /** Takes time, and turns: many pages at once are not to take every core from the planner. Empty where another one was worked out just now. */
    synchronized Optional<BrokenVisits> workOut(Speech say, FolderShown shown, Reach reach) {
        var atHand = atHand(say, shown, reach);
        if (atHand.isPresent()) return atHand;
        Plan published = shown.choice().published();
        Asked asked = asked(say, shown, reach);
        if (published == null || asked == null) return Optional.of(BrokenVisits.NONE);
        if (restedAt.get() - nanos.getAsLong() > 0) return Optional.empty();
        long begun = nanos.getAsLong();
        Instant now = clock.instant();
        var broken = BrokenVisits.of(say, shown, PlanBreaks.of(shown.folder(), published.visits(), now));
        keep(asked, new Answer(shown.folder(), now, broken));
        long ended = nanos.getAsLong();
        restedAt.set(ended + Math.min(SPARING * (ended - begun), LONGEST_REST.toNanos()));
        return Optional.of(broken);
    }

    private static @Nullable Asked asked(Speech say, FolderShown shown, Reach reach) {
        var publication = shown.choice().publication();
        return publication == null ? null : new Asked(publication.id(), reach, say.language());
    }

    private @Nullable Answer kept(Asked asked) {
        synchronized (kept) {
            return kept.get(asked);
        }
    }

    private void keep(Asked asked, Answer answer) {
        synchronized (kept) {
            kept.remove(asked);
            kept.put(asked, answer);
            if (kept.size() > KEPT) kept.remove(kept.keySet().iterator().next());
        }
    }
}
