package drylap.calendars;

import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A link to a crew's calendar as those see it who look after it; its secret is not known any more.
 *
 * @param reach the sites that the calendar tells of to whoever uses this link
 * @param reading in which language and by which ruler it tells
 * @param readAt when a device last asked for it; none: never
 */
public record CalendarLink(
        long id,
        CrewId crew,
        Reach reach,
        Reading reading,
        String by,
        Instant madeAt,
        @Nullable Instant readAt,
        @Nullable Instant revokedAt,
        @Nullable String revokedBy) {
    public boolean inUse() {
        return revokedAt == null;
    }
}
