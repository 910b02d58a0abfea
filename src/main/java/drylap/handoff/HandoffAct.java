package drylap.handoff;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The record of one act: who did what, when, in which state each opening was then. It can be printed and never changes.
 *
 * @param reason present where openings were returned
 * @param test present where water was sprayed
 * @param photos ids of the photos given with it
 */
public record HandoffAct(
        long id,
        SiteId site,
        ActKind kind,
        @Nullable HoldPoint holdPoint,
        Who who,
        Instant at,
        @Nullable ReturnReason reason,
        String note,
        @Nullable WaterTest test,
        List<Entry> entries,
        List<UUID> photos) {
    /** As they were called on that day. */
    public record Who(String name, String role, @Nullable String crew) {}

    /** @param state in words; {@code lastMark} is the number of the progress log's entry, 0 for none */
    public record Entry(OpeningId opening, String rating, String state, long lastMark) {}

    /** How water was sprayed, and what counted as a leak. */
    public record WaterTest(LeakDefinition leak, int pressurePa, int minutes) {
        private static final int MOST_PA = 5_000;
        private static final int MOST_MINUTES = 24 * 60;

        public WaterTest {
            if (pressurePa < 0 || pressurePa > MOST_PA)
                throw new Unfit(Saying.of("a test pressure of {0} Pa; accepted: 0 to {1}", pressurePa, MOST_PA));
            if (minutes < 1 || minutes > MOST_MINUTES)
                throw new Unfit(Saying.of("a test of {0} minutes; accepted: 1 to {1}", minutes, MOST_MINUTES));
        }
    }

    public HandoffAct {
        entries = List.copyOf(entries);
        photos = List.copyOf(photos);
    }
}
