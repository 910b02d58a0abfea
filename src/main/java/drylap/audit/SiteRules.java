package drylap.audit;

import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import java.util.EnumMap;
import java.util.Map;

/** The audit's own reading of section 4: a row of the site goes before a row of everywhere, and that before the default. */
final class SiteRules {
    private SiteRules() {}

    static Rules at(RuleBook book, SiteId site) {
        Map<Rule, Double> values = new EnumMap<>(Rule.class);
        Rules own = book.ofSites().get(site);
        for (Rule rule : Rule.values()) {
            if (own != null && own.own().containsKey(rule)) values.put(rule, own.value(rule));
            else if (book.everywhere().own().containsKey(rule))
                values.put(rule, book.everywhere().value(rule));
        }
        return new Rules(values);
    }
}
