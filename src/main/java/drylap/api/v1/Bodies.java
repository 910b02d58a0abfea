package drylap.api.v1;

import drylap.api.BadField;
import drylap.api.BadFields;
import drylap.api.Fields;
import drylap.handoff.ReturnReason;
import drylap.progress.MarkKind;
import drylap.progress.MarkRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads what a change of an opening says; every field that is wrong or unknown is named. */
final class Bodies {
    private static final int LONGEST_NOTE = 2_000;

    private Bodies() {}

    /** @param redoFrom the code of the line from which on the laps are no longer trusted; none: as the reason has it */
    record GiveBack(ReturnReason reason, @Nullable String redoFrom, String note) {}

    static MarkRequest mark(JsonNode body, OpeningDoor.Seen seen) {
        List<BadField> bad = new ArrayList<>();
        var fields = new Fields(body, "mark", bad);
        fields.only("line", "kind", "markedAt", "note", "reason");
        String line = line(fields, "line", fields.id("line"), seen, bad);
        var kind = fields.coded("kind", MarkKind.class, MarkKind.DONE);
        var at = fields.instant("markedAt");
        String note = fields.text("note", LONGEST_NOTE);
        String reason = fields.text("reason", LONGEST_NOTE);
        if (bad.isEmpty() && (kind == MarkKind.UNDONE) != (reason != null))
            fields.reject("reason", "a mark that undoes a line needs one, and no other has one");
        if (!bad.isEmpty()) throw new BadFields(bad);
        return new MarkRequest(UUID.randomUUID(), seen.folder(), seen.id(), line, kind, at, note, reason, List.of());
    }

    static String note(JsonNode body, String where) {
        List<BadField> bad = new ArrayList<>();
        var fields = new Fields(body, where, bad);
        fields.only("note");
        String note = Objects.requireNonNullElse(fields.text("note", LONGEST_NOTE), "");
        if (!bad.isEmpty()) throw new BadFields(bad);
        return note;
    }

    static GiveBack giveBack(JsonNode body, OpeningDoor.Seen seen) {
        List<BadField> bad = new ArrayList<>();
        var fields = new Fields(body, "return", bad);
        fields.only("reason", "redoFrom", "note");
        var reason = fields.coded("reason", ReturnReason.class, ReturnReason.OTHER);
        String note = Objects.requireNonNullElse(fields.text("note", LONGEST_NOTE), "");
        String redoFrom = fields.text("redoFrom", LONGEST_NOTE);
        if (redoFrom != null) line(fields, "redoFrom", redoFrom, seen, bad);
        if (bad.isEmpty() && reason == ReturnReason.OTHER && note.isBlank())
            fields.reject("note", "is missing; a return for something else says what");
        if (!bad.isEmpty()) throw new BadFields(bad);
        return new GiveBack(reason, redoFrom, note);
    }

    private static String line(Fields fields, String field, String line, OpeningDoor.Seen seen, List<BadField> bad) {
        var list = seen.state().list();
        if (bad.isEmpty() && list.line(line).isEmpty())
            fields.reject(
                    field,
                    "is \"%s\", no line of this opening; accepted: %s"
                            .formatted(
                                    line,
                                    list.lines().stream()
                                            .map(one -> one.code())
                                            .collect(java.util.stream.Collectors.joining(", "))));
        return line;
    }
}
