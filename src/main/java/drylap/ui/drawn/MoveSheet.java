package drylap.ui.drawn;

import drylap.audit.MoveVerdict;
import drylap.audit.PlanBreaks.Broken;
import drylap.planning.Ledger;
import drylap.planning.Visit;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The verdict on a move as a scheduler reads it.
 *
 * @param still the visit would stay where it is
 * @param legal it breaks no rule
 * @param headline the verdict in one line
 * @param broken one for each rule and visit that it breaks
 * @param mended one for each that it mends
 * @param cost what it does to the plan's cost
 */
public record MoveSheet(
        boolean still, boolean legal, String headline, List<Line> broken, List<Line> mended, String cost) {
    /**
     * @param rule the rule, in words
     * @param where task, opening, crew and hour
     * @param what what stands against it
     */
    public record Line(String rule, String where, String what) {}

    public static MoveSheet of(Speech say, FolderShown shown, MoveVerdict verdict) {
        List<Line> broken = lines(say, shown, verdict.broken());
        return new MoveSheet(
                verdict.still(),
                verdict.keepsEveryRule(),
                headline(say, verdict, broken.size()),
                broken,
                lines(say, shown, verdict.mended()),
                cost(say, verdict.before(), verdict.after()));
    }

    /** A visit in words, as on the sheet. */
    public static String visit(Speech say, FolderShown shown, Visit visit) {
        var zone = shown.site(visit.facade().site()).zone();
        return say.it(
                "{0} of {1}, crew {2}, {3} to {4}",
                Saying.of(Words.task(visit.task())),
                visit.opening(),
                visit.crew(),
                say.moment(visit.start(), zone),
                say.clock(visit.end(), zone));
    }

    /** Where it is and how long it takes. */
    public static String place(Speech say, FolderShown shown, Visit visit) {
        return say.it(
                "{0}, level {1}; {2} min",
                shown.title(visit.facade()),
                visit.level(),
                Duration.between(visit.start(), visit.end()).toMinutes());
    }

    private static String headline(Speech say, MoveVerdict verdict, int broken) {
        if (verdict.still()) return say.it("This is where it stands.");
        if (broken == 0) return say.it("It keeps every rule there.");
        return broken == 1 ? say.it("It breaks a rule there.") : say.it("It breaks rules at {0} places.", broken);
    }

    private static List<Line> lines(Speech say, FolderShown shown, List<Broken> all) {
        return all.stream()
                .map(one -> new Line(
                        say.it(one.breach().rule().words()),
                        where(say, shown, one.visit(), one.breach().where()),
                        say.it(one.breach().what())))
                .distinct()
                .toList();
    }

    private static String where(Speech say, FolderShown shown, @Nullable Visit visit, Saying otherwise) {
        return visit == null ? say.it(otherwise) : visit(say, shown, visit);
    }

    private static String cost(Speech say, Ledger before, Ledger after) {
        long covers = after.medium() - before.medium();
        long more = after.soft() - before.soft();
        String soft = costs(say, more);
        if (covers == 0) return soft;
        return say.it(
                covers > 0
                        ? "{0}; more openings stand open into the rain"
                        : "{0}; fewer openings stand open into the rain",
                soft);
    }

    static String costs(Speech say, long more) {
        if (more == 0) return say.it("costs the same");
        return say.it(more > 0 ? "costs {0} more" : "costs {0} less", Words.number(Math.abs(more)));
    }
}
