package drylap.ui.drawn;

import drylap.planning.Bound;
import drylap.planning.CostDifference;
import drylap.planning.MoveCost;
import drylap.planning.Remedy;
import drylap.planning.WhyThere;
import drylap.sites.Site;
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

    public static WhySheet of(FolderShown shown, WhyThere why, List<MoveCost> moves) {
        Site site = shown.site(why.visit().facade().site());
        return new WhySheet(
                why.bounds().stream().map(bound -> rule(bound, site)).toList(),
                moves.stream().map(cost -> move(shown, cost)).toList());
    }

    private static Rule rule(Bound bound, Site site) {
        return new Rule(Words.moment(bound.at(), site.zone()), bound.binds(), bound.words());
    }

    private static Move move(FolderShown shown, MoveCost cost) {
        return switch (cost) {
            case MoveCost.Possible(var move, var to, var _, var more) ->
                new Move(move, true, MoveSheet.visit(shown, to), cost(more));
            case MoveCost.NoPlace(var move, var rule) -> new Move(move, false, "no legal place: " + rule, "");
        };
    }

    /** What would plan a task that is left out. */
    public static String remedy(Remedy remedy) {
        var found = remedy.found();
        return found == null
                ? "None of the %d changes tried, from small to large, plans it.".formatted(remedy.tried())
                : "The smallest of the changes tried that plans it: %s. The plan then %s."
                        .formatted(found.change().words(), cost(found.more()));
    }

    private static String cost(CostDifference more) {
        String terms = more.terms().stream()
                .map(term -> "%s %s".formatted(term.term().code().replace('_', ' '), Words.difference(term.more())))
                .collect(Collectors.joining(", "));
        String soft = more.soft() == 0
                ? "costs the same"
                : "costs %s %s".formatted(Words.number(Math.abs(more.soft())), more.soft() > 0 ? "more" : "less");
        String all = terms.isEmpty() ? soft : "%s (%s)".formatted(soft, terms);
        if (more.medium() == 0) return all;
        return "%s; %s work is left out or open to rain".formatted(all, more.medium() > 0 ? "more" : "less");
    }
}
