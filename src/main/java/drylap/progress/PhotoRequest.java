package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import java.time.Instant;
import java.util.UUID;

/**
 * Someone sends a photo.
 *
 * @param id made where it was taken; sent twice, it is still one photo
 */
public record PhotoRequest(UUID id, FolderId folder, OpeningId opening, Instant takenAt, byte[] content) {}
