package drylap.handoff;

import static drylap.persistence.jooq.Tables.SITE_HOLD_POINT;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Which hold points apply at a site. */
@Service
public final class HoldPoints {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final News news;
    private final History history;

    HoldPoints(DSLContext db, TransactionTemplate transaction, News news, History history) {
        this.db = db;
        this.transaction = transaction;
        this.news = news;
        this.history = history;
    }

    /** Those that apply. */
    public Set<HoldPoint> at(FolderId folder, SiteId site) {
        var applying = EnumSet.noneOf(HoldPoint.class);
        Arrays.stream(HoldPoint.values()).filter(HoldPoint::usual).forEach(applying::add);
        db.selectFrom(SITE_HOLD_POINT)
                .where(SITE_HOLD_POINT.FOLDER_ID.eq(folder.value()), SITE_HOLD_POINT.SITE.eq(site.value()))
                .forEach(row -> {
                    var point = Coded.of(HoldPoint.class, row.getHoldPoint());
                    if (row.getApplies()) applying.add(point);
                    else applying.remove(point);
                });
        return applying;
    }

    public void apply(Person who, FolderId folder, SiteId site, HoldPoint point, boolean applies) {
        who.demand(Operation.CHANGE_RULES, site);
        transaction.executeWithoutResult(_ -> {
            db.insertInto(SITE_HOLD_POINT)
                    .set(SITE_HOLD_POINT.FOLDER_ID, folder.value())
                    .set(SITE_HOLD_POINT.SITE, site.value())
                    .set(SITE_HOLD_POINT.HOLD_POINT, point.code())
                    .set(SITE_HOLD_POINT.APPLIES, applies)
                    .onConflict(SITE_HOLD_POINT.FOLDER_ID, SITE_HOLD_POINT.SITE, SITE_HOLD_POINT.HOLD_POINT)
                    .doUpdate()
                    .set(SITE_HOLD_POINT.APPLIES, applies)
                    .execute();
            history.note(who, site, "hold point '%s' %s".formatted(point.words(), applies ? "applies" : "is off"));
            news.tell(new NewsItem(Acts.TOPIC, folder.value(), site.value(), ""));
        });
    }
}
