package drylap.planning;

import static drylap.persistence.jooq.Tables.RULE_VALUE;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.RuleValueRecord;
import drylap.progress.RulesOfSite;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The contractor's own numbers of each job folder, as stored. */
@Service
final class RuleValues implements RulesOfSite {
    private final DSLContext db;

    RuleValues(DSLContext db) {
        this.db = db;
    }

    void save(FolderId folder, Rules rules) {
        db.batchInsert(rules.own().entrySet().stream()
                        .map(own ->
                                new RuleValueRecord(folder.value(), own.getKey().code(), own.getValue()))
                        .toList())
                .execute();
    }

    Rules of(FolderId folder) {
        return new Rules(db.selectFrom(RULE_VALUE)
                .where(RULE_VALUE.FOLDER_ID.eq(folder.value()))
                .fetchMap(row -> Coded.of(Rule.class, row.getRule()), RuleValueRecord::getValue));
    }

    /** A folder has one set of numbers for all of its sites. */
    @Override
    public Rules of(FolderId folder, SiteId site) {
        return of(folder);
    }
}
