package drylap.roughopening;

import static drylap.persistence.jooq.Tables.ROUGH_MEASUREMENT;
import static drylap.persistence.jooq.Tables.ROUGH_SIZE;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.RoughMeasurementRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.RulesOfSite;
import drylap.roughopening.RoughResult.Recorded;
import drylap.roughopening.RoughResult.Refused;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.sites.Openings;
import drylap.speech.Saying;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The measurements of rough openings; they only grow, and the newest of an opening counts. */
@Service
public final class RoughOpenings {
    /** What is told when one is recorded. */
    public static final String TOPIC = "rough-opening";

    public static final int LONGEST_NOTE = 2_000;

    private final DSLContext db;
    private final Openings openings;
    private final RulesOfSite rules;
    private final News news;
    private final TransactionTemplate transaction;
    private final Clock clock;

    RoughOpenings(
            DSLContext db,
            Openings openings,
            RulesOfSite rules,
            News news,
            TransactionTemplate transaction,
            Clock clock) {
        this.db = db;
        this.openings = openings;
        this.rules = rules;
        this.news = news;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** The opening as it is designed, for whoever may look at it. */
    public Opening opening(Person who, FolderId folder, OpeningId opening) {
        who.demand(Operation.SEE_OPENINGS);
        return openings.find(folder, opening, who.reach())
                .orElseThrow(() -> new NotAllowed(who, Operation.SEE_OPENINGS, "at opening " + opening));
    }

    /** Newest first, each judged by the rules and the design of now. */
    public List<RoughMeasurement> of(Person who, FolderId folder, OpeningId id) {
        Opening opening = opening(who, folder, id);
        return db.selectFrom(ROUGH_MEASUREMENT)
                .where(ROUGH_MEASUREMENT.FOLDER_ID.eq(folder.value()))
                .and(ROUGH_MEASUREMENT.OPENING.eq(id.value()))
                .and(Within.reach(ROUGH_MEASUREMENT.SITE, who.reach()))
                .orderBy(ROUGH_MEASUREMENT.AT.desc(), ROUGH_MEASUREMENT.NUMBER.desc())
                .fetch(row -> measurement(folder, opening, row));
    }

    /** The one that counts. */
    public Optional<RoughMeasurement> newest(Person who, FolderId folder, OpeningId id) {
        return of(who, folder, id).stream().findFirst();
    }

    /** @param key made by the form, once for each filling in */
    public RoughResult record(Person who, FolderId folder, OpeningId id, UUID key, RoughSizes sizes, String note) {
        Opening opening = opening(who, folder, id);
        who.demand(Operation.MEASURE_OPENING, opening.facade().site());
        Optional<Saying> misfit = sizes.misfit();
        if (misfit.isPresent()) return new Refused(misfit.get());
        if (note.length() > LONGEST_NOTE)
            return new Refused(Saying.of("The note is too long; accepted: up to {0} characters.", LONGEST_NOTE));
        return transaction.execute(_ -> {
            boolean fresh = insert(who, folder, opening, key, sizes, note);
            if (fresh)
                news.tell(new NewsItem(
                        TOPIC, folder.value(), opening.facade().site().value(), id.value()));
            return of(who, folder, id).stream()
                    .filter(one -> one.id().equals(key))
                    .<RoughResult>map(Recorded::new)
                    .findFirst()
                    .orElseGet(() -> new Refused(Saying.of("This form was sent for another opening; open it anew.")));
        });
    }

    private boolean insert(Person who, FolderId folder, Opening opening, UUID key, RoughSizes sizes, String note) {
        int rows = db.insertInto(ROUGH_MEASUREMENT)
                .set(ROUGH_MEASUREMENT.ID, key)
                .set(ROUGH_MEASUREMENT.FOLDER_ID, folder.value())
                .set(ROUGH_MEASUREMENT.OPENING, opening.id().value())
                .set(ROUGH_MEASUREMENT.SITE, opening.facade().site().value())
                .set(ROUGH_MEASUREMENT.NOTE, note)
                .set(ROUGH_MEASUREMENT.PERSON_ID, who.id().value())
                .set(ROUGH_MEASUREMENT.PERSON, who.name())
                .set(ROUGH_MEASUREMENT.AT, clock.instant())
                .onConflict(ROUGH_MEASUREMENT.ID)
                .doNothing()
                .execute();
        if (rows == 0) return false;
        db.batch(sizes.each()
                        .map(one -> db.insertInto(ROUGH_SIZE)
                                .set(ROUGH_SIZE.MEASUREMENT_ID, key)
                                .set(ROUGH_SIZE.PLACE, one.getKey().code())
                                .set(ROUGH_SIZE.SIZE_MM, one.getValue()))
                        .toList())
                .execute();
        return true;
    }

    private RoughMeasurement measurement(FolderId folder, Opening opening, RoughMeasurementRecord row) {
        Map<RoughPlace, BigDecimal> sizes = new EnumMap<>(RoughPlace.class);
        db.selectFrom(ROUGH_SIZE)
                .where(ROUGH_SIZE.MEASUREMENT_ID.eq(row.getId()))
                .forEach(size -> sizes.put(Coded.of(RoughPlace.class, size.getPlace()), size.getSizeMm()));
        var measured = new RoughSizes(sizes);
        return new RoughMeasurement(
                row.getId(),
                opening.id(),
                measured,
                row.getNote(),
                row.getPerson(),
                row.getAt(),
                RoughRules.judge(
                        measured,
                        opening.widthMm(),
                        opening.heightMm(),
                        rules.of(folder, opening.facade().site())));
    }
}
