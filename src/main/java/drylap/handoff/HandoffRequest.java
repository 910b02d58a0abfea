package drylap.handoff;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Someone hands openings over or takes them over.
 *
 * @param key made on the page; sent twice, it is still one act
 * @param seen the openings, all of one site, each with the version of the state that the person looked at
 */
public record HandoffRequest(UUID key, FolderId folder, Map<OpeningId, Long> seen, String note, List<UUID> photos) {
    private static final int MOST_OPENINGS = 500;

    public HandoffRequest {
        seen = Map.copyOf(seen);
        photos = List.copyOf(photos);
        if (seen.isEmpty() || seen.size() > MOST_OPENINGS)
            throw new IllegalArgumentException("%d openings; accepted: 1 to %d".formatted(seen.size(), MOST_OPENINGS));
    }

    boolean sawVersion(OpeningId opening, long version) {
        return Long.valueOf(version).equals(seen.get(opening));
    }

    /** The openings in a fixed order, so that two acts at once never wait for each other in a ring. */
    List<OpeningId> openings() {
        return seen.keySet().stream()
                .sorted(java.util.Comparator.comparing(OpeningId::value))
                .toList();
    }
}
