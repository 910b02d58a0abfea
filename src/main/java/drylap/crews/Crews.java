package drylap.crews;

import static drylap.persistence.jooq.Tables.CREW;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Trade;
import drylap.persistence.jooq.tables.records.CrewRecord;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The crews of each job folder, as stored. */
@Service
public final class Crews {
    private final DSLContext db;

    Crews(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Crew> crews) {
        save(folder, crews, 0);
    }

    /** One more, behind those that are there. */
    public void add(FolderId folder, Crew crew) {
        int next = db.select(DSL.coalesce(DSL.max(CREW.ROW_NO), -1).plus(1))
                .from(CREW)
                .where(CREW.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
        save(folder, List.of(crew), next);
    }

    /** With its shifts. Whoever asks has seen that nothing else hangs on it. */
    public void remove(FolderId folder, CrewId crew) {
        db.deleteFrom(CREW)
                .where(CREW.FOLDER_ID.eq(folder.value()), CREW.CREW_.eq(crew.value()))
                .execute();
    }

    /** @param people none: not told */
    public void setPeople(FolderId folder, CrewId crew, @Nullable Integer people) {
        db.update(CREW)
                .set(CREW.PEOPLE, people)
                .where(CREW.FOLDER_ID.eq(folder.value()), CREW.CREW_.eq(crew.value()))
                .execute();
    }

    private void save(FolderId folder, List<Crew> crews, int firstRow) {
        List<CrewRecord> rows = new ArrayList<>(crews.size());
        for (Crew crew : crews)
            rows.add(new CrewRecord(
                    folder.value(),
                    crew.id().value(),
                    firstRow + rows.size(),
                    crew.trade().code(),
                    crew.methods().stream().sorted().map(Method::code).toArray(String[]::new),
                    crew.base().latitude(),
                    crew.base().longitude(),
                    crew.zone().getId(),
                    crew.people()));
        db.batchInsert(rows).execute();
    }

    public List<Crew> of(FolderId folder) {
        return db.selectFrom(CREW)
                .where(CREW.FOLDER_ID.eq(folder.value()))
                .orderBy(CREW.ROW_NO)
                .fetch(Crews::crew);
    }

    private static Crew crew(CrewRecord row) {
        return new Crew(
                new CrewId(row.getCrew()),
                Coded.of(Trade.class, row.getTrade()),
                Arrays.stream(row.getMethods())
                        .map(code -> Coded.of(Method.class, code))
                        .collect(Collectors.toSet()),
                new GeoPoint(row.getLatitude(), row.getLongitude()),
                ZoneId.of(row.getTimeZone()),
                row.getPeople());
    }
}
