package drylap.api;

import drylap.handoff.HandoffRequest;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.JsonNode;

/** Openings to release, each with the version of its state that the person looked at. */
final class ReleaseBody {
    private static final int MOST_OPENINGS = 200;
    private static final int LONGEST_NOTE = 2_000;

    private ReleaseBody() {}

    /** @throws BadFields with every field that cannot be read */
    static HandoffRequest read(JsonNode body) {
        List<BadField> bad = new ArrayList<>();
        var fields = new Fields(body, "release", bad);
        var key = fields.key("key");
        var folder = new FolderId(fields.folder("folder"));
        var seen = seen(fields);
        String note = Objects.requireNonNullElse(fields.text("note", LONGEST_NOTE), "");
        if (!bad.isEmpty()) throw new BadFields(bad);
        return new HandoffRequest(key, folder, seen, note, List.of());
    }

    private static Map<OpeningId, Long> seen(Fields fields) {
        Map<OpeningId, Long> seen = new HashMap<>();
        for (Fields one : fields.objects("openings", MOST_OPENINGS)) {
            var opening = new OpeningId(one.id("opening"));
            if (seen.put(opening, one.count("version")) != null) one.reject("opening", "is named twice");
        }
        return seen;
    }
}
