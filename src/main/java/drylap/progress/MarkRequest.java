package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Someone wants a line marked as done, or undone again with a reason.
 *
 * @param key made where it was marked; sent twice, it is still one mark
 */
public record MarkRequest(
        UUID key,
        FolderId folder,
        OpeningId opening,
        String line,
        MarkKind kind,
        Instant markedAt,
        @Nullable String note,
        @Nullable String reason,
        List<UUID> photos) {
    public static final int LONGEST_TEXT = 2_000;
    public static final int MOST_PHOTOS = 20;

    public MarkRequest {
        note = blankAsNone(note, "note");
        reason = blankAsNone(reason, "reason");
        photos = List.copyOf(photos);
        if ((kind == MarkKind.UNDONE) != (reason != null))
            throw new IllegalArgumentException("reason: a mark that undoes a line needs one, and no other has one");
        if (photos.size() > MOST_PHOTOS)
            throw new IllegalArgumentException("photos: %d; accepted: up to %d".formatted(photos.size(), MOST_PHOTOS));
    }

    public static MarkRequest done(UUID key, FolderId folder, OpeningId opening, String line, Instant markedAt) {
        return new MarkRequest(key, folder, opening, line, MarkKind.DONE, markedAt, null, null, List.of());
    }

    public static MarkRequest undone(
            UUID key, FolderId folder, OpeningId opening, String line, Instant markedAt, String reason) {
        return new MarkRequest(key, folder, opening, line, MarkKind.UNDONE, markedAt, null, reason, List.of());
    }

    private static @Nullable String blankAsNone(@Nullable String text, String name) {
        if (text == null || text.isBlank()) return null;
        if (text.length() > LONGEST_TEXT)
            throw new IllegalArgumentException(
                    "%s: %d characters; accepted: up to %d".formatted(name, text.length(), LONGEST_TEXT));
        return text;
    }
}
