package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.kernel.Trade;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.ui.drawn.StartSheet.Step;
import java.util.List;
import java.util.stream.Collectors;

/** What a start page says of each step: what is there, or what is missing and why it is asked for. */
final class StartWords {
    private static final int NAMED = 3;

    private StartWords() {}

    static Saying of(StartFacts facts, Step step) {
        return switch (step) {
            case SITE -> sites(facts);
            case WALLS -> walls(facts);
            case OPENINGS -> openings(facts);
            case CREWS -> crews(facts);
            case FORECAST -> forecast(facts);
            case PLAN -> plan(facts);
            case PUBLISHED -> published(facts);
            case PLANNER ->
                Saying.of(
                        facts.done(step)
                                ? "Somebody plans. Sites, crews and plans are theirs to put in."
                                : "Nobody who may sign in plans yet. Add a scheduler, or a contractor who also manages people.");
            case ACCOUNTS ->
                Saying.of(
                        facts.done(step)
                                ? "Crews may sign in."
                                : "A crew sees its day on a phone once somebody of it may sign in. Nothing else waits for that.");
        };
    }

    private static Saying sites(StartFacts facts) {
        return facts.sites().isEmpty()
                ? Saying.of("None yet. The place says when it is light and which weather counts.")
                : names(facts.sites());
    }

    private static Saying walls(StartFacts facts) {
        if (facts.sites().isEmpty())
            return Saying.of("Rain comes with the wind, so it matters which way a wall faces.");
        return facts.withoutWalls().isEmpty()
                ? Saying.of("{0, plural, one {# wall} other {# walls}}", facts.walls())
                : Saying.of(
                        "No wall yet at {0}. Rain comes with the wind, so it matters which way a wall faces.",
                        names(facts.withoutWalls()));
    }

    private static Saying openings(StartFacts facts) {
        if (facts.openings() == 0)
            return Saying.of(
                    "None yet. The contractor's window schedule, XLSX or CSV; an empty one can be fetched there too.");
        var there = Saying.of("{0, plural, one {# opening} other {# openings}}", facts.openings());
        return facts.withoutOpenings().isEmpty()
                ? there
                : Saying.of("{0}; none yet at {1}", there, names(facts.withoutOpenings()));
    }

    private static Saying crews(StartFacts facts) {
        var there = Saying.of(
                "{0, plural, one {# crew with days to come.} other {# crews with days to come.}}", facts.crews());
        var works = facts.lacking().stream().map(StartWords::work).toList();
        if (works.isEmpty()) return there;
        var lacking = Saying.of("Nobody comes yet for: {0}.", Saying.list(", ", works));
        return facts.crews() == 0 ? lacking : Saying.list(" ", List.of(there, lacking));
    }

    private static Saying work(Trade trade) {
        return Saying.of(
                switch (trade) {
                    case WINDOW -> "setting windows";
                    case TESTER -> "water tests";
                    case WRAP -> "wrap";
                    case SIDING -> "cladding";
                });
    }

    private static Saying forecast(StartFacts facts) {
        if (facts.done(Step.FORECAST)) return Saying.of("There is one for every site.");
        var rule = RuleWords.of(Rule.BEYOND_RAIN_P);
        return facts.sites().isEmpty()
                ? Saying.of("None yet. Hours without one count as open, and may rain by the rule “{0}”.", rule)
                : Saying.of(
                        "None from now on at {0}. Hours without one count as open, and may rain by the rule “{1}”.",
                        names(facts.withoutForecast()), rule);
    }

    private static Saying plan(StartFacts facts) {
        if (facts.planning()) return Saying.of("Being planned.");
        if (facts.done(Step.PLAN)) return Saying.of("There is one.");
        return Saying.of(
                facts.mayPlan()
                        ? "Everything is there to plan with."
                        : "It needs openings and a crew with days to come.");
    }

    private static Saying published(StartFacts facts) {
        if (facts.done(Step.PUBLISHED)) return Saying.of("Crews work by it.");
        return Saying.of(
                facts.done(Step.PLAN)
                        ? "Look at the week sheet, then publish it there."
                        : "A plan is a proposal until somebody publishes it.");
    }

    private static Saying names(List<Site> sites) {
        String named = sites.stream().limit(NAMED).map(Site::name).collect(Collectors.joining(", "));
        return sites.size() > NAMED ? Saying.of("{0} and {1} more", named, sites.size() - NAMED) : Saying.asItIs(named);
    }
}
