package drylap.kernel;

import java.util.EnumMap;
import java.util.Map;

/** The values in force: a contractor's own where given, else the defaults. */
public record Rules(Map<Rule, Double> own) {
    public static final Rules STANDARD = new Rules(Map.of());

    public Rules {
        own.forEach(Rules::check);
        own = Map.copyOf(own);
    }

    public double value(Rule rule) {
        Double mine = own.get(rule);
        return mine == null ? rule.standard() : mine;
    }

    /** For rules that are whole by nature, such as weights. */
    public int whole(Rule rule) {
        return Math.toIntExact(Math.round(value(rule)));
    }

    public Rules with(Rule rule, double value) {
        Map<Rule, Double> changed = new EnumMap<>(Rule.class);
        changed.putAll(own);
        changed.put(rule, value);
        return new Rules(changed);
    }

    private static void check(Rule rule, double value) {
        if (!(value >= rule.least() && value <= rule.most()) || (rule.whole() && value != Math.rint(value)))
            throw new IllegalArgumentException("%s is %s; accepted is %s %s to %s"
                    .formatted(
                            rule.code(),
                            value,
                            rule.whole() ? "a whole number from" : "a number from",
                            rule.least(),
                            rule.most()));
    }
}
