package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.intake.csv.Range;
import drylap.intake.csv.Table;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import java.util.EnumMap;
import java.util.Map;

/** The rows of {@code rules.csv}. */
final class RuleRows {
    private RuleRows() {}

    static Rules read(Table table) {
        Map<Rule, Double> own = new EnumMap<>(Rule.class);
        Ids<Rule> named = new Ids<>("rule", ContractFiles.RULES);
        table.each(row -> {
            Rule rule = row.coded("rule", Rule.class);
            if (!row.sound()) return;
            named.claim(row, "rule", rule);
            double value = row.number("value", new Range(rule.unit(), rule.least(), rule.most(), rule.whole()));
            if (row.sound()) own.put(rule, value);
        });
        return new Rules(own);
    }

    static Lines write(Rules rules) {
        Lines lines = new Lines(ContractFiles.RULES);
        for (Rule rule : Rule.values()) {
            Double value = rules.own().get(rule);
            if (value != null) lines.add(rule.code(), Lines.number(value));
        }
        return lines;
    }
}
