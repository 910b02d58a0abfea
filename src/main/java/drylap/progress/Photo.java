package drylap.progress;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.pictures.MediaType;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A photo taken at an opening; its bytes are fetched with {@link Photos#content}.
 *
 * @param looked its size and small copy; empty for one of earlier times that was not looked at yet, or cannot be decoded
 */
public record Photo(
        UUID id,
        OpeningId opening,
        SiteId site,
        String person,
        Instant takenAt,
        MediaType type,
        int sizeBytes,
        String sha256,
        Optional<Looked> looked) {
    /**
     * What was seen when it was looked at.
     *
     * @param widthPx upright
     * @param thumbnail the digest of its small copy, a JPEG
     */
    public record Looked(int widthPx, int heightPx, String thumbnail) {}
}
