package drylap.calendars;

import drylap.kernel.SiteId;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An entry of a crew's calendar.
 *
 * @param sequence rises with every change; a device takes the highest of a uid
 * @param cancelledAt where the crew is no longer sent there
 */
record Entry(
        UUID uid,
        SiteId site,
        int sequence,
        Told told,
        Instant changedAt,
        @Nullable Instant cancelledAt) {}
