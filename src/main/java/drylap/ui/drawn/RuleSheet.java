package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.planning.RuleChange;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The rules of one place, each with its value, where that comes from, and what may be put in. */
public record RuleSheet(List<Line> lines) {
    /**
     * One rule.
     *
     * @param value with its unit
     * @param from who or what set it
     * @param effect what it does, and what comes of raising or lowering it
     * @param standard the default with its unit and source
     * @param bounds what is accepted
     * @param ownHere set for this very place, so that it can go back
     * @param seenId the newest change of it here, 0 for none
     */
    public record Line(
            Rule rule,
            String name,
            String effect,
            String value,
            String from,
            String standard,
            String bounds,
            boolean ownHere,
            long seenId) {}

    /** What a sheet is made of: the rules in force, as imported, and the newest changes. */
    public record Facts(RuleBook now, RuleBook imported, List<RuleChange> changes, ZoneId zone) {}

    /** @param site none for everywhere */
    public static RuleSheet of(Facts facts, @Nullable SiteId site) {
        return new RuleSheet(Arrays.stream(Rule.values())
                .filter(rule -> site == null || rule.ofSite())
                .map(rule -> line(facts, site, rule))
                .toList());
    }

    private static Line line(Facts facts, @Nullable SiteId site, Rule rule) {
        Rules rules = site == null ? facts.now().everywhere() : facts.now().at(site);
        var here = change(facts, site, rule);
        return new Line(
                rule,
                RuleWords.of(rule),
                RuleEffects.of(rule),
                plain(rules.value(rule)) + " " + rule.unit(),
                from(facts, site, rule),
                "default %s %s; %s".formatted(plain(rule.standard()), rule.unit(), rule.source()),
                "%s %s to %s"
                        .formatted(
                                rule.whole() ? "a whole number from" : "a number from",
                                plain(rule.least()),
                                plain(rule.most())),
                here.filter(one -> one.value() != null).isPresent(),
                here.map(RuleChange::id).orElse(0L));
    }

    private static String from(Facts facts, @Nullable SiteId site, Rule rule) {
        var here = change(facts, site, rule);
        if (here.filter(one -> one.value() != null).isPresent()) return said(facts, here.get(), "set");
        String back = here.map(one -> "; " + said(facts, one, "set back")).orElse("");
        return lower(facts, site, rule) + back;
    }

    private static String lower(Facts facts, @Nullable SiteId site, Rule rule) {
        if (site == null)
            return imported(facts.imported().everywhere(), rule, "from the job folder")
                    .orElse("default");
        return imported(facts.imported().ofSite(site), rule, "from the job folder, for this site")
                .orElseGet(() -> "as everywhere: " + from(facts, null, rule));
    }

    private static Optional<String> imported(Rules rules, Rule rule, String words) {
        return rules.own().containsKey(rule) ? Optional.of(words) : Optional.empty();
    }

    private static String said(Facts facts, RuleChange change, String did) {
        return "%s by %s, %s: %s".formatted(did, change.by(), Words.moment(change.at(), facts.zone()), change.reason());
    }

    private static Optional<RuleChange> change(Facts facts, @Nullable SiteId site, Rule rule) {
        return facts.changes().stream()
                .filter(one -> one.rule() == rule && Objects.equals(one.site(), site))
                .findFirst();
    }

    /** Without an exponent or needless zeros. */
    public static String plain(double value) {
        return BigDecimal.valueOf(value)
                .add(BigDecimal.ZERO)
                .stripTrailingZeros()
                .toPlainString();
    }
}
