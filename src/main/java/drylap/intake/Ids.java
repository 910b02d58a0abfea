package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Row;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Who of one kind is known, and since which line. An id counts as known even when the rest of its line is wrong, so that
 * one mistake is not told twice; when the file itself could not be read, every id counts as known.
 */
final class Ids<K> {
    /**
     * What is known so.
     *
     * @param one with its article
     * @param oneOf of a file; none where nothing refers to it
     */
    record Kind(String name, String one, @Nullable FolderWords oneOf) {
        static final Kind SITE = new Kind(FolderWords.SITE, FolderWords.A_SITE, FolderWords.A_SITE_OF);
        static final Kind FACADE = new Kind(FolderWords.FACADE, FolderWords.A_FACADE, FolderWords.A_FACADE_OF);
        static final Kind OPENING = new Kind(FolderWords.OPENING, FolderWords.AN_OPENING, FolderWords.AN_OPENING_OF);
        static final Kind CREW = new Kind(FolderWords.CREW, FolderWords.A_CREW, FolderWords.A_CREW_OF);
        static final Kind SHIFT = new Kind(FolderWords.SHIFT, FolderWords.A_SHIFT, null);
        static final Kind VISIT = new Kind(FolderWords.VISIT, FolderWords.A_VISIT, null);
        static final Kind RULE = new Kind(FolderWords.RULE, FolderWords.A_RULE, null);
        static final Kind LABOUR = new Kind(FolderWords.LABOUR, FolderWords.A_LABOUR, null);
        static final Kind LEG = new Kind(FolderWords.LEG, FolderWords.A_LEG, null);
        /** Of the ledger of a plan, which no screen reads in. */
        static final Kind TERM = new Kind("term", "a term", null);

        private Kind(FolderWords name, FolderWords one, @Nullable FolderWords oneOf) {
            this(name.with(), one.with(), oneOf);
        }
    }

    private final Kind kind;
    private final Header home;
    private final Map<K, Integer> lines = new HashMap<>();
    private boolean incomplete;

    Ids(Kind kind, Header home) {
        this.kind = kind;
        this.home = home;
    }

    /** Enters an id of a row, or says where it was used before. */
    void claim(Row row, String column, K id) {
        if (!row.sound() && row.blank(column)) return;
        Integer before = lines.putIfAbsent(id, row.line());
        if (before != null)
            row.wrong(column, FolderWords.STANDS_ALREADY.with(kind.one(), before), FolderWords.ONCE.with(kind.name()));
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
            row.wrong(
                    column,
                    FolderWords.REFERS.with(kind.name()),
                    Objects.requireNonNull(kind.oneOf()).with(home.file()));
    }
}
