package drylap.planning;

import static drylap.persistence.jooq.Tables.RULE_VALUE;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.RuleValueRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The contractor's own numbers of each job folder, as imported; their sites are saved first. */
@Service
final class RuleValues {
    private final DSLContext db;

    RuleValues(DSLContext db) {
        this.db = db;
    }

    void save(FolderId folder, RuleBook book) {
        List<RuleValueRecord> rows = new ArrayList<>(rows(folder, null, book.everywhere()));
        book.ofSites().forEach((site, rules) -> rows.addAll(rows(folder, site, rules)));
        db.batchInsert(rows).execute();
    }

    RuleBook of(FolderId folder, Reach reach) {
        RuleBook book = RuleBook.STANDARD;
        for (RuleValueRecord row : db.selectFrom(RULE_VALUE)
                .where(RULE_VALUE.FOLDER_ID.eq(folder.value()))
                .and(RULE_VALUE.SITE.isNull().or(Within.reach(RULE_VALUE.SITE, reach))))
            book = book.with(site(row.getSite()), Coded.of(Rule.class, row.getRule()), row.getValue());
        return book;
    }

    private static List<RuleValueRecord> rows(FolderId folder, @Nullable SiteId site, Rules rules) {
        return rules.own().entrySet().stream()
                .map(own -> new RuleValueRecord(
                        folder.value(), own.getKey().code(), own.getValue(), site == null ? null : site.value()))
                .toList();
    }

    static @Nullable SiteId site(@Nullable String site) {
        return site == null ? null : new SiteId(site);
    }
}
