package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.PlanChange;
import drylap.planning.PlanChange.Kind;
import drylap.planning.PlanChange.Reason;
import drylap.planning.PlanChange.Why;
import drylap.planning.PlanComparison;
import drylap.planning.Visit;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a proposal changes for those who work by the published plan, and why.
 *
 * @param rows what moves, comes or goes, first what comes soonest; work that is done by now is only counted
 * @param costs both plans' costs term by term, the sum last
 */
public record PlanChanges(List<Row> rows, String summary, List<Cost> costs) {
    /** @param kind in a word, as the table says it */
    public record Row(
            OpeningId opening,
            Task task,
            String kind,
            @Nullable VisitTime before,
            @Nullable VisitTime after,
            String was,
            String is,
            String why) {}

    /** @param more the proposal's cost over the published plan's */
    public record Cost(String term, long published, long proposal, long more) {}

    public static PlanChanges of(Speech say, FolderShown shown, Plan published, Plan proposal) {
        var compared = PlanComparison.of(published, proposal, shown.folder());
        List<PlanChange> changed = compared.changes().stream()
                .filter(change -> change.kind() != Kind.SAME && !done(change))
                .sorted(Comparator.comparing(PlanChanges::soonest))
                .toList();
        return new PlanChanges(
                changed.stream().map(change -> row(say, shown, change)).toList(),
                summary(say, compared, changed),
                costs(
                        say,
                        compared,
                        published.ledger().soft(),
                        proposal.ledger().soft()));
    }

    private static String summary(Speech say, PlanComparison compared, List<PlanChange> changed) {
        long done = compared.changes().stream().filter(PlanChanges::done).count();
        return say.it(
                done == 0
                        ? "{0} moved, {1} added, {2} dropped, {3} as they were"
                        : "{0} moved, {1} added, {2} dropped, {3} as they were, {4} done by now",
                count(changed, Kind.MOVED),
                count(changed, Kind.ADDED),
                count(changed, Kind.DROPPED),
                compared.of(Kind.SAME).size(),
                done);
    }

    private static long count(List<PlanChange> changes, Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).count();
    }

    private static boolean done(PlanChange change) {
        return change.why().stream().anyMatch(why -> why.reason() == Reason.DONE);
    }

    private static Instant soonest(PlanChange change) {
        return Stream.of(change.before(), change.after())
                .filter(Objects::nonNull)
                .map(Visit::start)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Row row(Speech say, FolderShown shown, PlanChange change) {
        SiteId site = shown.opening(change.opening()).facade().site();
        ZoneId zone = shown.site(site).zone();
        return new Row(
                change.opening(),
                change.task(),
                kind(say, change.kind()),
                time(change.before(), zone),
                time(change.after(), zone),
                visit(say, change.before(), zone),
                visit(say, change.after(), zone),
                why(say, change));
    }

    private static String kind(Speech say, Kind kind) {
        return say.it(
                switch (kind) {
                    case MOVED -> "moved";
                    case ADDED -> "added";
                    case DROPPED -> "dropped";
                    case SAME -> "as it was";
                });
    }

    private static @Nullable VisitTime time(@Nullable Visit visit, ZoneId zone) {
        return visit == null ? null : VisitTime.of(visit, zone);
    }

    private static String visit(Speech say, @Nullable Visit visit, ZoneId zone) {
        return visit == null
                ? say.it("not planned")
                : "%s, %s".formatted(say.moment(visit.start(), zone), visit.crew());
    }

    private static String why(Speech say, PlanChange change) {
        if (!change.why().isEmpty())
            return change.why().stream().map(one -> words(say, one)).collect(Collectors.joining("; "));
        return switch (change.kind()) {
            case MOVED -> say.it("the planner found it better so");
            case ADDED, DROPPED, SAME -> "";
        };
    }

    private static String words(Speech say, Why why) {
        Saying reason = Saying.of(why.reason().words());
        Saying detail = why.detail();
        if (detail == null) return say.it(reason);
        return switch (why.reason()) {
            case SHUT, NO_SHIFT -> say.it(detail);
            case DELIVERY -> say.it("{0}, on {1}", reason, detail);
            case FOLLOWS -> say.it("its {0} ends later now", detail);
            case ROOM -> say.it("to make room for the {0}", detail);
            case DONE, TIME_PASSED, LEFT_OUT, PLACED, RETURNED, PINNED -> say.it("{0}: {1}", reason, detail);
        };
    }

    private static List<Cost> costs(Speech say, PlanComparison compared, long published, long proposal) {
        Stream<Cost> terms = compared.ledger().stream()
                .map(term ->
                        new Cost(LedgerSheet.name(say, term.term()), term.published(), term.proposed(), term.more()));
        return Stream.concat(terms, Stream.of(new Cost(say.it("Sum"), published, proposal, proposal - published)))
                .toList();
    }
}
