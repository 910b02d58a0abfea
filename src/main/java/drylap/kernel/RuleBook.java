package drylap.kernel;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A contractor's numbers for all sites, and those of single sites that have their own.
 *
 * @param ofSites what a site has of its own, over what holds everywhere
 */
public record RuleBook(Rules everywhere, Map<SiteId, Rules> ofSites) {
    public static final RuleBook STANDARD = of(Rules.STANDARD);

    public RuleBook {
        ofSites.values().forEach(RuleBook::check);
        ofSites = ofSites.entrySet().stream()
                .filter(site -> !site.getValue().own().isEmpty())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** The same everywhere. */
    public static RuleBook of(Rules everywhere) {
        return new RuleBook(everywhere, Map.of());
    }

    /** What holds at a site. */
    public Rules at(SiteId site) {
        Rules rules = everywhere;
        for (var own : ofSite(site).own().entrySet()) rules = rules.with(own.getKey(), own.getValue());
        return rules;
    }

    /** A site's own, without what holds everywhere. */
    public Rules ofSite(SiteId site) {
        return ofSites.getOrDefault(site, Rules.STANDARD);
    }

    /** @param site none for everywhere */
    public RuleBook with(@Nullable SiteId site, Rule rule, double value) {
        if (site == null) return new RuleBook(everywhere.with(rule, value), ofSites);
        Map<SiteId, Rules> changed = new HashMap<>(ofSites);
        changed.put(site, ofSite(site).with(rule, value));
        return new RuleBook(everywhere, changed);
    }

    /** Without the rules of other sites. */
    public RuleBook within(Set<SiteId> sites) {
        return new RuleBook(
                everywhere,
                ofSites.entrySet().stream()
                        .filter(site -> sites.contains(site.getKey()))
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    private static void check(Rules ofSite) {
        for (Rule rule : ofSite.own().keySet())
            if (!rule.ofSite())
                throw new IllegalArgumentException(
                        "%s weighs the whole plan and has no value of a site".formatted(rule.code()));
    }
}
