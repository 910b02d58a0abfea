package drylap.planning;

import drylap.kernel.Coded;
import drylap.kernel.Rule;

/** What makes one plan better than another; each term has a weight that a contractor can change. */
public enum LedgerTerm implements Coded {
    LATE_HANDOVER("late_handover", Rule.WEIGHT_LATE_HANDOVER, "hours that a facade's cladding ends past its due date"),
    CREW_DAYS("crew_days", Rule.WEIGHT_CREW_DAYS, "days on which a crew comes out"),
    TRAVEL("travel", Rule.WEIGHT_TRAVEL, "minutes on the road, to and from the base included"),
    SETUP("setup", Rule.WEIGHT_SETUP, "minutes of setting up at a site, facade or level"),
    OVERTIME("overtime", Rule.WEIGHT_OVERTIME, "minutes after the shift's end, the way back included"),
    OPEN_COURSE("open_course", Rule.WEIGHT_OPEN_COURSE, "hours from a course's first install to its last"),
    RAIN_RISK("rain_risk", Rule.WEIGHT_RAIN_RISK, "thousandths of chance of rain while an opening is open"),
    CHANGED("changed", Rule.WEIGHT_CHANGED, "tasks whose crew or date differs from the published plan");

    private final String code;
    private final Rule weight;
    private final String meaning;

    LedgerTerm(String code, Rule weight, String meaning) {
        this.code = code;
        this.weight = weight;
        this.meaning = meaning;
    }

    @Override
    public String code() {
        return code;
    }

    public Rule weight() {
        return weight;
    }

    public String meaning() {
        return meaning;
    }
}
