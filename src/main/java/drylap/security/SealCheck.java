package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.HISTORY_SEAL;
import static drylap.persistence.jooq.Tables.HISTORY_WORDS_GONE;

import drylap.persistence.jooq.tables.records.ChangeLogRecord;
import drylap.persistence.jooq.tables.records.HistorySealRecord;
import drylap.persistence.jooq.tables.records.HistoryWordsGoneRecord;
import drylap.platform.DatabasePlace;
import drylap.platform.DatabaseTrouble;
import drylap.security.HistorySeals.Head;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/**
 * Whether the history is what was sealed. What was changed with all seals after it reckoned anew only a head that was noted elsewhere
 * shows.
 */
public final class SealCheck {
    /** How the act of taking someone away reads in the history: what stands for them, lines whose words changed, and a digest over those. */
    static final String TAKEN_AWAY = "took %s away; %d lines of the history read otherwise since, sha256 %s";

    private static final Pattern ACT = Pattern.compile(
            "took person [0-9]+ away; [0-9]+ lines of the history read otherwise since, sha256 ([0-9a-f]{64})");
    private static final int AT_A_TIME = 1_000;

    private final DSLContext db;
    private final @Nullable Head noted;
    private final List<String> faults = new ArrayList<>();
    private Head last = new Head(0, SealChain.START);
    private boolean metNoted;
    /** The newest of each line whose words are gone. */
    private final Map<Long, HistoryWordsGoneRecord> gone = new HashMap<>();
    /** By act, the digest over all lines whose words it changed. */
    private final Map<Long, String> acts = new LinkedHashMap<>();

    private final Set<String> told = new HashSet<>();

    private SealCheck(DSLContext db, @Nullable Head noted) {
        this.db = db;
        this.noted = noted;
        var rows = db.selectFrom(HISTORY_WORDS_GONE)
                .orderBy(HISTORY_WORDS_GONE.ACT_ID, HISTORY_WORDS_GONE.CHANGE_ID)
                .fetch();
        rows.forEach(row -> gone.put(row.getChangeId(), row));
        rows.intoGroups(HISTORY_WORDS_GONE.ACT_ID)
                .forEach((act, of) -> acts.put(
                        act,
                        HistoryWords.digest(
                                of.map(row -> new HistoryWords.Gone(row.getChangeId(), row.getWordsSha256())))));
    }

    /**
     * What a check found.
     *
     * @param head the newest seal; empty where nothing was sealed yet
     * @param unsealed lines that wait to be sealed
     * @param withoutName sealed lines that a name was taken out of since
     * @param faults each says which seal and what is wrong with it
     */
    public record Result(long sealed, Optional<Head> head, long unsealed, long withoutName, List<String> faults) {}

    /**
     * Goes through all seals. In one transaction that sees one moment, lines that are written meanwhile count for nothing.
     *
     * @param noted a head that was noted earlier
     */
    public static Result of(DSLContext db, Optional<Head> noted) {
        return new SealCheck(db, noted.orElse(null)).result();
    }

    /**
     * The same, as the database stands at one moment; the application may go on meanwhile.
     *
     * @throws DatabaseTrouble where there is no database with seals
     */
    public static Result at(DatabasePlace place, Optional<Head> noted) throws SQLException {
        if (!place.exists())
            throw new DatabaseTrouble(
                    "There is no database in %s.".formatted(place.data().toAbsolutePath()),
                    "DRYLAP_DATA names the folder in which the application keeps one, DRYLAP_DB_URL one that others run.");
        try (var reached = place.reach()) {
            DSLContext db = DSL.using(reached.atOneMoment(), SQLDialect.POSTGRES);
            if (db.fetchValue("select to_regclass('history_words_gone')") == null)
                throw new DatabaseTrouble(
                        "The database is that of an earlier version.",
                        "Start this version once: it brings the database up to date and seals the history within a minute.");
            return of(db, noted);
        }
    }

    private Result result() {
        long sealed = 0;
        try (Cursor<Record> rows = rows()) {
            for (Record row : rows) {
                sealed++;
                look(row.into(HISTORY_SEAL), row.get(CHANGE_LOG.ID) == null ? null : row.into(CHANGE_LOG));
            }
        }
        if (noted != null && !metNoted)
            faults.add("seal %d, which was noted, is not there: the newest is %d".formatted(noted.seq(), last.seq()));
        lookForActs();
        long lines = db.fetchCount(CHANGE_LOG);
        return new Result(
                sealed,
                sealed == 0 ? Optional.empty() : Optional.of(last),
                Math.max(0, lines - sealed),
                gone.size(),
                faults);
    }

    /** Words are gone by an act only that the history tells of, with a digest over just these lines. */
    private void lookForActs() {
        db.selectFrom(CHANGE_LOG)
                .where(DSL.notExists(
                        DSL.selectOne().from(HISTORY_SEAL).where(HISTORY_SEAL.CHANGE_ID.eq(CHANGE_LOG.ID))))
                .forEach(row -> hear(row.getWhat()));
        acts.forEach((act, digest) -> {
            if (!told.contains(digest))
                faults.add(
                        "a name was taken out of lines of the history by act %d, of which the history does not tell so"
                                .formatted(act));
        });
    }

    private void hear(String what) {
        var act = ACT.matcher(what);
        if (act.matches()) told.add(act.group(1));
    }

    private Cursor<Record> rows() {
        return db.select(DSL.asterisk())
                .from(HISTORY_SEAL)
                .leftJoin(CHANGE_LOG)
                .on(CHANGE_LOG.ID.eq(HISTORY_SEAL.CHANGE_ID))
                .orderBy(HISTORY_SEAL.SEQ)
                .fetchSize(AT_A_TIME)
                .fetchLazy();
    }

    private void look(HistorySealRecord seal, @Nullable ChangeLogRecord line) {
        long seq = seal.getSeq();
        if (seq != last.seq() + 1)
            faults.add("seal %d is gone: %d comes after %d".formatted(last.seq() + 1, seq, last.seq()));
        if (line == null) faults.add("seal %d: line %d is gone".formatted(seq, seal.getChangeId()));
        else compare(seal, HistorySeals.line(line));
        last = new Head(seq, seal.getSha256());
        if (noted != null && noted.seq() == seq) meet(seal);
    }

    private void compare(HistorySealRecord seal, SealChain.Line line) {
        var left = gone.get(line.id());
        boolean words = left == null
                ? SealChain.words(seal.getNonce(), line).equals(seal.getWordsSha256())
                : SealChain.words(left.getNonce(), line).equals(left.getWordsSha256());
        String sha256 = SealChain.seal(last.sha256(), seal.getSeq(), line, seal.getWordsSha256());
        hear(line.what());
        if (!words || !sha256.equals(seal.getSha256()))
            faults.add("seal %d: line %d (\"%s %s\") is not what was sealed"
                    .formatted(seal.getSeq(), line.id(), line.person(), line.what()));
    }

    private void meet(HistorySealRecord seal) {
        metNoted = true;
        if (noted != null && !noted.sha256().equals(seal.getSha256()))
            faults.add("seal %d is another than the one that was noted".formatted(seal.getSeq()));
    }
}
