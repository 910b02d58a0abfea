package drylap.cli;

import drylap.kernel.FacadeId;
import drylap.planning.Bound;
import drylap.planning.CostDifference;
import drylap.planning.JobFolder;
import drylap.planning.MoveCost;
import drylap.planning.Remedy;
import drylap.planning.Visit;
import drylap.planning.WhyThere;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Prints explanations. */
final class ExplainText {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final JobFolder folder;
    private final PrintWriter out;

    ExplainText(JobFolder folder, PrintWriter out) {
        this.folder = folder;
        this.out = out;
    }

    void why(WhyThere why) {
        Visit visit = why.visit();
        out.printf("The %s of %s: %s. What its start waits for:%n", visit.task().code(), visit.opening(), place(visit));
        for (Bound bound : why.bounds())
            out.printf(
                    "  %s %s  %s%n",
                    bound.binds() ? "binds" : "     ", when(bound.at(), visit.facade()), bound.words());
        if (why.binding().isEmpty()) out.println("  No rule of today's folder holds it to that minute.");
    }

    void moves(List<MoveCost> moves) {
        out.println("What a move would cost, the rest planned again around it:");
        moves.forEach(move -> out.println("  " + line(move)));
    }

    private String line(MoveCost cost) {
        return switch (cost) {
            case MoveCost.Possible(var move, var to, var _, var more) ->
                "%s: %s; %s".formatted(move, place(to), difference(more));
            case MoveCost.NoPlace(var move, var rule) -> "%s: no legal place, %s".formatted(move, rule);
        };
    }

    void remedy(Remedy remedy) {
        var task = remedy.task();
        out.printf(
                "The %s of %s is not planned: %s, %s.%n",
                task.task().code(), task.opening(), task.reason().code(), task.detail());
        var found = remedy.found();
        if (found == null) out.printf("None of the %d changes tried, from small to large, plans it.%n", remedy.tried());
        else
            out.printf(
                    "The smallest change of those tried that plans it (%d tried): %s; %s.%n",
                    remedy.tried(), found.change().words(), difference(found.more()));
    }

    private String place(Visit visit) {
        return "crew %s, %s".formatted(visit.crew(), when(visit.start(), visit.facade()));
    }

    private static String difference(CostDifference more) {
        String terms = more.terms().stream()
                .map(term -> "%s %+,d".formatted(term.term().code(), term.more()))
                .collect(Collectors.joining(", "));
        return "cost %+,d%s%s"
                .formatted(
                        more.soft(),
                        terms.isEmpty() ? "" : " (" + terms + ")",
                        more.medium() == 0 ? "" : ", work left out %+,d".formatted(more.medium()));
    }

    private String when(Instant at, FacadeId facade) {
        return WHEN.format(at.atZone(folder.zone(facade.site())));
    }
}
