package drylap.progress;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One entry of the log.
 *
 * @param line the code of the line of the opening's work list
 * @param markedAt by the clock of the device
 * @param receivedAt by ours
 * @param reason why it was undone
 */
public record Mark(
        long id,
        OpeningId opening,
        String line,
        MarkKind kind,
        PersonId personId,
        String person,
        @Nullable CrewId crew,
        Instant markedAt,
        Instant receivedAt,
        UUID key,
        @Nullable String note,
        @Nullable String reason,
        List<UUID> photos) {
    public Mark {
        photos = List.copyOf(photos);
    }

    /** When it was done, as far as one can know: a device's clock that runs ahead is not believed. */
    public Instant at() {
        return markedAt.isBefore(receivedAt) ? markedAt : receivedAt;
    }
}
