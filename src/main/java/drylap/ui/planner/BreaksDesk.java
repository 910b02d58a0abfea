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
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/**
 * Judges the published plan by the facts of now. With 3,000 openings that takes more than a second, so pages ask for what is
 * at hand and let it be worked out beside them; one answer serves all pages that show the same.
 */
@Service
final class BreaksDesk {
    private static final Duration FRESH = Duration.ofMinutes(1);
    private static final int KEPT = 8;

    private final Clock clock;
    private final Map<Asked, Answer> kept = new LinkedHashMap<>();

    private record Asked(PublicationId publication, Reach reach, Language language) {}

    /** @param folder as it stood, which is all that the answer depends on besides the time */
    private record Answer(JobFolder folder, Instant at, BrokenVisits broken) {}

    BreaksDesk(Clock clock) {
        this.clock = clock;
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

    /** Takes time, and turns: many pages at once are not to take every core from the planner. */
    synchronized BrokenVisits workOut(Speech say, FolderShown shown, Reach reach) {
        return atHand(say, shown, reach).orElseGet(() -> {
            Instant now = clock.instant();
            Plan published = shown.choice().published();
            Asked asked = asked(say, shown, reach);
            if (published == null || asked == null) return BrokenVisits.NONE;
            var broken = BrokenVisits.of(say, shown, PlanBreaks.of(shown.folder(), published.visits(), now));
            keep(asked, new Answer(shown.folder(), now, broken));
            return broken;
        });
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
