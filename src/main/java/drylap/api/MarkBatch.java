package drylap.api;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.MarkKind;
import drylap.progress.MarkRequest;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The marks that a device has waiting, in the order in which they were made. */
final class MarkBatch {
    static final int MOST = 200;

    private final List<BadField> bad = new ArrayList<>();

    private MarkBatch() {}

    /** @throws BadFields with every field that cannot be read */
    static List<MarkRequest> read(JsonNode body) {
        var batch = new MarkBatch();
        if (!body.isArray()) batch.bad.add(new BadField("marks", "is no JSON array"));
        else if (body.size() > MOST)
            batch.bad.add(new BadField("marks", "has %d marks; accepted: up to %d".formatted(body.size(), MOST)));
        List<MarkRequest> requests = new ArrayList<>();
        if (batch.bad.isEmpty()) for (JsonNode mark : body) batch.add(requests, mark);
        if (!batch.bad.isEmpty()) throw new BadFields(batch.bad);
        return requests;
    }

    private void add(List<MarkRequest> requests, JsonNode mark) {
        int before = bad.size();
        var fields = new Fields(mark, "marks[%d]".formatted(requests.size()), bad);
        var kind = fields.coded("kind", MarkKind.class, MarkKind.DONE);
        var reason = fields.text("reason", MarkRequest.LONGEST_TEXT);
        if (bad.size() == before && (kind == MarkKind.UNDONE) != (reason != null))
            fields.reject("reason", "a mark that undoes a line needs one, and no other has one");
        boolean undone = kind == MarkKind.UNDONE && reason != null;
        requests.add(new MarkRequest(
                fields.key("key"),
                new FolderId(fields.folder("folder")),
                new OpeningId(fields.id("opening")),
                fields.id("line"),
                undone ? MarkKind.UNDONE : MarkKind.DONE,
                fields.instant("markedAt"),
                fields.text("note", MarkRequest.LONGEST_TEXT),
                undone ? reason : null,
                fields.keys("photoIds", MarkRequest.MOST_PHOTOS)));
    }
}
