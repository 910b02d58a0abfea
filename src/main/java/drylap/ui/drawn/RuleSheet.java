package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.planning.RuleChange;
import drylap.speech.Saying;
import drylap.speech.Speech;
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
    public static RuleSheet of(Speech say, Facts facts, @Nullable SiteId site) {
        var told = new Told(say, facts, site);
        return new RuleSheet(Arrays.stream(Rule.values())
                .filter(rule -> site == null || rule.ofSite())
                .map(told::line)
                .toList());
    }

    /** What is known of one place, said to one reader. */
    private record Told(Speech say, Facts facts, @Nullable SiteId site) {
        Line line(Rule rule) {
            Rules rules = site == null ? facts.now().everywhere() : facts.now().at(site);
            var here = change(site, rule);
            return new Line(
                    rule,
                    say.it(RuleWords.of(rule)),
                    say.it(RuleEffects.of(rule)),
                    plain(rules.value(rule)) + " " + say.it(rule.unit()),
                    say.it(from(site, rule)),
                    say.it(
                            "default {0} {1}; {2}",
                            plain(rule.standard()), Saying.of(rule.unit()), Saying.of(rule.source())),
                    say.it(
                            rule.whole() ? "a whole number from {0} to {1}" : "a number from {0} to {1}",
                            plain(rule.least()),
                            plain(rule.most())),
                    here.filter(one -> one.value() != null).isPresent(),
                    here.map(RuleChange::id).orElse(0L));
        }

        private Saying from(@Nullable SiteId place, Rule rule) {
            var here = change(place, rule);
            if (here.filter(one -> one.value() != null).isPresent()) return done(here.get(), false);
            Saying lower = lower(place, rule);
            return here.map(one -> Saying.of("{0}; {1}", lower, done(one, true)))
                    .orElse(lower);
        }

        private Saying lower(@Nullable SiteId place, Rule rule) {
            if (place == null)
                return imported(facts.imported().everywhere(), rule)
                        ? Saying.of("from the job folder")
                        : Saying.of("default");
            return imported(facts.imported().ofSite(place), rule)
                    ? Saying.of("from the job folder, for this site")
                    : Saying.of("as everywhere: {0}", from(null, rule));
        }

        private static boolean imported(Rules rules, Rule rule) {
            return rules.own().containsKey(rule);
        }

        private Saying done(RuleChange change, boolean back) {
            var at = say.moment(change.at(), facts.zone());
            return Saying.of(
                    back ? "set back by {0}, {1}: {2}" : "set by {0}, {1}: {2}", change.by(), at, change.reason());
        }

        private Optional<RuleChange> change(@Nullable SiteId place, Rule rule) {
            return facts.changes().stream()
                    .filter(one -> one.rule() == rule && Objects.equals(one.site(), place))
                    .findFirst();
        }
    }

    /** Without an exponent or needless zeros. */
    public static String plain(double value) {
        return BigDecimal.valueOf(value)
                .add(BigDecimal.ZERO)
                .stripTrailingZeros()
                .toPlainString();
    }
}
