package drylap.ui.planner;

import drylap.forecasts.LastingRain;
import drylap.forecasts.LastingRains;
import drylap.kernel.FolderId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.RuleChange;
import drylap.planning.RuleChangeResult;
import drylap.planning.RuleRequest;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.ui.drawn.RuleSheet;
import drylap.ui.drawn.SiteForecast.Lasting;
import java.util.Objects;
import org.springframework.stereotype.Service;

/** How rain lasts at a site, and the rule that takes it over for the plan. */
@Service
final class LastingDesk {
    private final LastingRains rains;
    private final ChangedRules rules;

    LastingDesk(LastingRains rains, ChangedRules rules) {
        this.rains = rains;
        this.rules = rules;
    }

    LastingRain of(Person who, Site site) {
        return rains.of(who, site);
    }

    boolean mayTake(Person who, SiteId site) {
        return who.may(Operation.CHANGE_RULES, site);
    }

    /** The newest change of the rule at the site, 0 for none. */
    long seen(Person who, FolderId folder, SiteId site) {
        return rules.newest(who, folder).stream()
                .filter(change -> change.rule() == Rule.RAIN_PERSISTENCE && site.equals(change.site()))
                .mapToLong(RuleChange::id)
                .findFirst()
                .orElse(0);
    }

    /** What came of it; the reason that the rule keeps is English, as the history is. */
    Saying take(Person who, FolderId folder, SiteId site, Lasting lasting, long seen) {
        double value = Objects.requireNonNull(lasting.offered());
        var asked = new RuleRequest(site, Rule.RAIN_PERSISTENCE, value, "solved from " + lasting.whence(), seen);
        return switch (rules.change(who, folder, asked)) {
            case RuleChangeResult.Changed _ ->
                Saying.of("From the next plan on, rain lasts here by {0}.", RuleSheet.plain(value));
            case RuleChangeResult.Refused(var why) -> why;
            case RuleChangeResult.ChangedMeanwhile(var newer) ->
                Saying.of("{0} changed this rule meanwhile; nothing was changed now.", newer.by());
        };
    }
}
