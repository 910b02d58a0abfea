package drylap.climate;

import static drylap.persistence.jooq.Tables.KEPT_NORMALS;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.KeptNormalsRecord;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The monthly normals that people brought in for the sites of a job folder. */
@Service
public final class KeptNormals {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final History history;

    KeptNormals(DSLContext db, TransactionTemplate transaction, History history) {
        this.db = db;
        this.transaction = transaction;
        this.history = history;
    }

    /** All of them, for work that acts for nobody; each names its site. */
    public List<MonthlyNormals> of(FolderId folder) {
        return db.selectFrom(KEPT_NORMALS)
                .where(KEPT_NORMALS.FOLDER_ID.eq(folder.value()))
                .orderBy(KEPT_NORMALS.SITE, KEPT_NORMALS.MONTH)
                .fetch(row -> new MonthlyNormals(
                        new SiteId(row.getSite()),
                        row.getMonth(),
                        row.getRainMm(),
                        row.getRainDays(),
                        row.getColdDays(),
                        row.getGustDays()));
    }

    /**
     * Takes the place of all that was kept for the sites that they name; those without a site are of the one given.
     *
     * @throws drylap.security.NotAllowed where one of the sites is not the person's; then nothing is kept
     */
    public void keep(Person who, FolderId folder, SiteId site, List<MonthlyNormals> normals) {
        who.demand(Operation.CHANGE_CLIMATE, site);
        List<MonthlyNormals> named = normals.stream()
                .map(one -> one.site() == null ? one.at(site) : one)
                .toList();
        Set<SiteId> sites = named.stream()
                .map(one -> Objects.requireNonNull(one.site()))
                .collect(Collectors.toCollection(TreeSet::new));
        for (SiteId one : sites) who.demand(Operation.CHANGE_CLIMATE, one);
        transaction.executeWithoutResult(_ -> {
            for (SiteId one : sites) {
                drop(folder, one);
                history.note(who, one, "brought in monthly normals");
            }
            db.batchInsert(named.stream().map(one -> row(folder, one)).toList()).execute();
        });
    }

    /** Without any the site's forecasts, or an assumption, stand in again. */
    public void drop(Person who, FolderId folder, SiteId site) {
        who.demand(Operation.CHANGE_CLIMATE, site);
        transaction.executeWithoutResult(_ -> {
            if (drop(folder, site) > 0) history.note(who, site, "removed the monthly normals");
        });
    }

    private int drop(FolderId folder, SiteId site) {
        return db.deleteFrom(KEPT_NORMALS)
                .where(KEPT_NORMALS.FOLDER_ID.eq(folder.value()), KEPT_NORMALS.SITE.eq(site.value()))
                .execute();
    }

    private static KeptNormalsRecord row(FolderId folder, MonthlyNormals one) {
        return new KeptNormalsRecord(
                folder.value(),
                String.valueOf(one.site()),
                one.month(),
                one.rainMm(),
                one.rainDays(),
                one.coldDays(),
                one.gustDays());
    }
}
