package drylap.ui.drawn;

import drylap.audit.MoveVerdict;
import drylap.audit.PlanBreaks.Broken;
import drylap.planning.Ledger;
import drylap.planning.Visit;
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

    public static MoveSheet of(FolderShown shown, MoveVerdict verdict) {
        List<Line> broken = lines(shown, verdict.broken());
        return new MoveSheet(
                verdict.still(),
                verdict.keepsEveryRule(),
                headline(verdict, broken.size()),
                broken,
                lines(shown, verdict.mended()),
                cost(verdict.before(), verdict.after()));
    }

    /** A visit in words, as on the sheet. */
    public static String visit(FolderShown shown, Visit visit) {
        var zone = shown.site(visit.facade().site()).zone();
        return "%s of %s, crew %s, %s to %s"
                .formatted(
                        Words.task(visit.task()),
                        visit.opening(),
                        visit.crew(),
                        Words.moment(visit.start(), zone),
                        Words.clock(visit.end(), zone));
    }

    /** Where it is and how long it takes. */
    public static String place(FolderShown shown, Visit visit) {
        return "%s, level %d; %d min"
                .formatted(
                        shown.title(visit.facade()),
                        visit.level(),
                        Duration.between(visit.start(), visit.end()).toMinutes());
    }

    private static String headline(MoveVerdict verdict, int broken) {
        if (verdict.still()) return "This is where it stands.";
        if (broken == 0) return "It keeps every rule there.";
        return broken == 1 ? "It breaks a rule there." : "It breaks rules at %d places.".formatted(broken);
    }

    private static List<Line> lines(FolderShown shown, List<Broken> all) {
        return all.stream()
                .map(one -> new Line(
                        one.breach().rule().words(),
                        where(shown, one.visit(), one.breach().where()),
                        one.breach().what()))
                .distinct()
                .toList();
    }

    private static String where(FolderShown shown, @Nullable Visit visit, String otherwise) {
        return visit == null ? otherwise : visit(shown, visit);
    }

    private static String cost(Ledger before, Ledger after) {
        long covers = after.medium() - before.medium();
        long more = after.soft() - before.soft();
        String soft =
                more == 0 ? "costs the same" : "costs %d %s".formatted(Math.abs(more), more > 0 ? "more" : "less");
        if (covers == 0) return soft;
        return "%s; %s openings stand open into the rain".formatted(soft, covers > 0 ? "more" : "fewer");
    }
}
