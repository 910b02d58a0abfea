package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Row;
import java.util.HashMap;
import java.util.Map;

/**
 * Who of one kind is known, and since which line. An id counts as known even when the rest of its line is wrong, so that
 * one mistake is not told twice; when the file itself could not be read, every id counts as known.
 */
final class Ids<K> {
    private final String kind;
    private final Header home;
    private final Map<K, Integer> lines = new HashMap<>();
    private boolean incomplete;

    Ids(String kind, Header home) {
        this.kind = kind;
        this.home = home;
    }

    /** Enters an id of a row, or says where it was used before. */
    void claim(Row row, String column, K id) {
        if (!row.sound() && row.blank(column)) return;
        Integer before = lines.putIfAbsent(id, row.line());
        if (before != null)
            row.wrong(column, "stands for %s of line %d already".formatted(one(), before), "each " + kind + " once");
    }

    /** Enters an id of something that was read before. */
    void enter(K id) {
        lines.put(id, 0);
    }

    /** The file, or some line of it, could not be read: the ids that are missing may have stood there. */
    void markIncomplete() {
        incomplete = true;
    }

    /** Stands in its file, as far as that could be read. */
    boolean claimed(K id) {
        return lines.containsKey(id);
    }

    /** May be referred to. */
    boolean known(K id) {
        return incomplete || claimed(id);
    }

    /** Says so when the id of a reference is nobody's. */
    void require(Row row, String column, K id) {
        if (!row.blank(column) && !known(id))
            row.wrong(column, "refers to no " + kind, "%s of %s".formatted(one(), home.file()));
    }

    private String one() {
        return (kind.startsWith("o") ? "an " : "a ") + kind;
    }
}
