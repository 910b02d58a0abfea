package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Range;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rows of {@code rules.csv}. */
final class RuleRows {
    /** A folder without rules of single sites is written as it always was. */
    private static final Header EVERYWHERE = Header.of(ContractFiles.RULES.file(), "rule", "value");

    private record Named(@Nullable SiteId site, Rule rule) {}

    private record Given(@Nullable SiteId site, Rule rule, double value) {}

    private RuleRows() {}

    static RuleBook read(Table table, Known known) {
        List<Given> given = new ArrayList<>();
        Ids<Named> named = new Ids<>(Ids.Kind.RULE, ContractFiles.RULES);
        table.each(row -> {
            Rule rule = row.coded("rule", Rule.class);
            if (!row.sound()) return;
            SiteId site = site(row, rule, known);
            named.claim(row, "rule", new Named(site, rule));
            double value = row.number("value", new Range(rule.unit(), rule.least(), rule.most(), rule.whole()));
            if (row.sound()) given.add(new Given(site, rule, value));
        });
        RuleBook book = RuleBook.STANDARD;
        for (Given one : given) book = book.with(one.site(), one.rule(), one.value());
        return book;
    }

    private static @Nullable SiteId site(Row row, Rule rule, Known known) {
        if (row.blank("site")) return null;
        SiteId site = new SiteId(row.text("site"));
        known.sites.require(row, "site", site);
        if (!rule.ofSite()) row.wrong("site", FolderWords.WHOLE_PLAN.with(rule.code()), FolderWords.BLANK_CELL.with());
        return site;
    }

    static Lines write(RuleBook rules, List<SiteId> sites) {
        boolean everywhere = rules.ofSites().isEmpty();
        Lines lines = new Lines(everywhere ? EVERYWHERE : ContractFiles.RULES);
        write(lines, rules.everywhere(), everywhere ? new Object[0] : new Object[] {""});
        for (SiteId site : sites) write(lines, rules.ofSite(site), site);
        return lines;
    }

    private static void write(Lines lines, Rules rules, Object... site) {
        for (Rule rule : Rule.values()) {
            Double value = rules.own().get(rule);
            if (value == null) continue;
            List<Object> cells = new ArrayList<>(List.of(rule.code(), Lines.number(value)));
            cells.addAll(List.of(site));
            lines.add(cells.toArray());
        }
    }
}
