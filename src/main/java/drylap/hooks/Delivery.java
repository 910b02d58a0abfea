package drylap.hooks;

import drylap.handoff.ActKind;
import drylap.kernel.SiteId;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One act told to one hook.
 *
 * @param dueAt when it is tried again; none once it has ended
 * @param lastWords what came of the last try
 */
public record Delivery(
        UUID id,
        long hook,
        ActKind kind,
        SiteId site,
        String body,
        Instant madeAt,
        DeliveryState state,
        @Nullable Instant dueAt,
        int attempts,
        @Nullable Instant lastAt,
        @Nullable String lastWords) {}
