package drylap.ui.drawn;

import drylap.planning.Bound;
import drylap.planning.CostDifference;
import drylap.planning.MoveCost;
import drylap.planning.Remedy;
import drylap.planning.WhyThere;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Why a visit is where it is and what moves would cost, as a scheduler reads it.
 *
 * @param rules what its start waits for, by the minute
 */
public record WhySheet(List<Rule> rules, List<Move> moves) {
    /** @param binds the start waits for this one */
    public record Rule(String when, boolean binds, String words) {}

    /** @param to where the visit would be; the rule that leaves no place, where there is none */
    public record Move(String move, boolean possible, String to, String cost) {}

    public static WhySheet of(Speech say, FolderShown shown, WhyThere why, List<MoveCost> moves) {
        Site site = shown.site(why.visit().facade().site());
        return new WhySheet(
                why.bounds().stream().map(bound -> rule(say, bound, site)).toList(),
                moves.stream().map(cost -> move(say, shown, cost)).toList());
    }

    private static Rule rule(Speech say, Bound bound, Site site) {
        return new Rule(say.moment(bound.at(), site.zone()), bound.binds(), say.it(bound.saying()));
    }

    private static Move move(Speech say, FolderShown shown, MoveCost cost) {
        return switch (cost) {
            case MoveCost.Possible(var move, var to, var _, var more) ->
                new Move(say.it(move), true, MoveSheet.visit(say, shown, to), cost(say, more));
            case MoveCost.NoPlace(var move, var rule) ->
                new Move(say.it(move), false, say.it("no legal place: {0}", rule), "");
        };
    }

    /** What would plan a task that is left out. */
    public static String remedy(Speech say, Remedy remedy) {
        var found = remedy.found();
        return found == null
                ? say.it("None of the {0} changes tried, from small to large, plans it.", remedy.tried())
                : say.it(
                        "The smallest of the changes tried that plans it: {0}. The plan then {1}.",
                        found.change().saying(), cost(say, found.more()));
    }

    private static String cost(Speech say, CostDifference more) {
        String terms = more.terms().stream()
                .map(term ->
                        "%s %s".formatted(say.it(LedgerSheet.term(term.term())), Words.difference(say, term.more())))
                .collect(Collectors.joining(", "));
        String soft = MoveSheet.costs(say, more.soft());
        String all = terms.isEmpty() ? soft : "%s (%s)".formatted(soft, terms);
        if (more.medium() == 0) return all;
        return say.it(
                more.medium() > 0
                        ? "{0}; more work is left out or open to rain"
                        : "{0}; less work is left out or open to rain",
                all);
    }
}
