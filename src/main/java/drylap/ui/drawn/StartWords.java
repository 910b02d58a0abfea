package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.kernel.Trade;
import drylap.sites.Site;
import drylap.ui.drawn.StartSheet.Step;
import java.util.List;
import java.util.stream.Collectors;

/** What a start page says of each step: what is there, or what is missing and why it is asked for. */
final class StartWords {
    private static final int NAMED = 3;

    private StartWords() {}

    static String of(StartFacts facts, Step step) {
        return switch (step) {
            case SITE -> sites(facts);
            case WALLS -> walls(facts);
            case OPENINGS -> openings(facts);
            case CREWS -> crews(facts);
            case FORECAST -> forecast(facts);
            case PLAN -> plan(facts);
            case PUBLISHED -> published(facts);
            case PLANNER ->
                facts.done(step)
                        ? "Somebody plans. Sites, crews and plans are theirs to put in."
                        : "Nobody who may sign in plans yet. Add a scheduler, or a contractor who also manages people.";
            case ACCOUNTS ->
                facts.done(step)
                        ? "Crews may sign in."
                        : "A crew sees its day on a phone once somebody of it may sign in. Nothing else waits for that.";
        };
    }

    private static String sites(StartFacts facts) {
        return facts.sites().isEmpty()
                ? "None yet. The place says when it is light and which weather counts."
                : names(facts.sites());
    }

    private static String walls(StartFacts facts) {
        if (facts.sites().isEmpty()) return "Rain comes with the wind, so it matters which way a wall faces.";
        return facts.withoutWalls().isEmpty()
                ? count(facts.walls(), "wall")
                : "No wall yet at %s. Rain comes with the wind, so it matters which way a wall faces."
                        .formatted(names(facts.withoutWalls()));
    }

    private static String openings(StartFacts facts) {
        if (facts.openings() == 0)
            return "None yet. The contractor's window schedule, XLSX or CSV; an empty one can be fetched there too.";
        return count(facts.openings(), "opening")
                + (facts.withoutOpenings().isEmpty() ? "" : "; none yet at " + names(facts.withoutOpenings()));
    }

    private static String crews(StartFacts facts) {
        String there = facts.crews() == 0 ? "" : count((int) facts.crews(), "crew") + " with days to come. ";
        if (facts.lacking().isEmpty()) return there.strip();
        return there
                + "Nobody comes yet for: %s."
                        .formatted(
                                facts.lacking().stream().map(StartWords::work).collect(Collectors.joining(", ")));
    }

    private static String work(Trade trade) {
        return switch (trade) {
            case WINDOW -> "setting windows";
            case TESTER -> "water tests";
            case WRAP -> "wrap";
            case SIDING -> "cladding";
        };
    }

    private static String forecast(StartFacts facts) {
        if (facts.done(Step.FORECAST)) return "There is one for every site.";
        return "%s. Hours without one count as open, and may rain by the rule \"%s\"."
                .formatted(
                        facts.sites().isEmpty() ? "None yet" : "None from now on at " + names(facts.withoutForecast()),
                        RuleWords.of(Rule.BEYOND_RAIN_P));
    }

    private static String plan(StartFacts facts) {
        if (facts.planning()) return "Being planned.";
        if (facts.done(Step.PLAN)) return "There is one.";
        return facts.mayPlan()
                ? "Everything is there to plan with."
                : "It needs openings and a crew with days to come.";
    }

    private static String published(StartFacts facts) {
        if (facts.done(Step.PUBLISHED)) return "Crews work by it.";
        return facts.done(Step.PLAN)
                ? "Look at the week sheet, then publish it there."
                : "A plan is a proposal until somebody publishes it.";
    }

    private static String count(int number, String what) {
        return "%,d %s%s".formatted(number, what, number == 1 ? "" : "s");
    }

    private static String names(List<Site> sites) {
        String named = sites.stream().limit(NAMED).map(Site::name).collect(Collectors.joining(", "));
        return sites.size() > NAMED ? "%s and %d more".formatted(named, sites.size() - NAMED) : named;
    }
}
