package drylap.progress;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import java.time.Instant;
import java.util.UUID;

/** A photo taken at an opening; its bytes are fetched with {@link Photos#content}. */
public record Photo(
        UUID id,
        OpeningId opening,
        SiteId site,
        String person,
        Instant takenAt,
        MediaType type,
        int sizeBytes,
        String sha256) {}
