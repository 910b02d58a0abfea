package drylap.crews;

import static drylap.persistence.jooq.Tables.TRAVEL_LEG;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.TravelLegRecord;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The given travel times of each job folder, as stored. */
@Service
public final class TravelLegs {
    private final DSLContext db;

    TravelLegs(DSLContext db) {
        this.db = db;
    }

    public void save(FolderId folder, TravelTimes travel) {
        List<TravelLegRecord> rows = travel.given().entrySet().stream()
                .map(leg -> new TravelLegRecord(
                        folder.value(), leg.getKey().from(), leg.getKey().to(), leg.getValue()))
                .toList();
        db.batchInsert(rows).execute();
    }

    public TravelTimes of(FolderId folder) {
        return new TravelTimes(db.select(TRAVEL_LEG.FROM_PLACE, TRAVEL_LEG.TO_PLACE, TRAVEL_LEG.MINUTES)
                .from(TRAVEL_LEG)
                .where(TRAVEL_LEG.FOLDER_ID.eq(folder.value()))
                .fetchMap(row -> new TravelTimes.Leg(row.value1(), row.value2()), row -> row.value3()));
    }
}
