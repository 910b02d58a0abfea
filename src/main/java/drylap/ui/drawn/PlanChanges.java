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
import java.time.Instant;
import java.time.LocalDate;
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

    public static PlanChanges of(FolderShown shown, Plan published, Plan proposal) {
        var compared = PlanComparison.of(published, proposal, shown.folder());
        List<PlanChange> changed = compared.changes().stream()
                .filter(change -> change.kind() != Kind.SAME && !done(change))
                .sorted(Comparator.comparing(PlanChanges::soonest))
                .toList();
        return new PlanChanges(
                changed.stream().map(change -> row(shown, change)).toList(),
                summary(compared, changed),
                costs(compared, published.ledger().soft(), proposal.ledger().soft()));
    }

    private static String summary(PlanComparison compared, List<PlanChange> changed) {
        long done = compared.changes().stream().filter(PlanChanges::done).count();
        return "%d moved, %d added, %d dropped, %d as they were%s"
                .formatted(
                        count(changed, Kind.MOVED),
                        count(changed, Kind.ADDED),
                        count(changed, Kind.DROPPED),
                        compared.of(Kind.SAME).size(),
                        done == 0 ? "" : ", %d done by now".formatted(done));
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

    private static Row row(FolderShown shown, PlanChange change) {
        SiteId site = shown.opening(change.opening()).facade().site();
        ZoneId zone = shown.site(site).zone();
        return new Row(
                change.opening(),
                change.task(),
                kind(change.kind()),
                time(change.before(), zone),
                time(change.after(), zone),
                visit(change.before(), zone),
                visit(change.after(), zone),
                why(change));
    }

    private static String kind(Kind kind) {
        return switch (kind) {
            case MOVED -> "moved";
            case ADDED -> "added";
            case DROPPED -> "dropped";
            case SAME -> "as it was";
        };
    }

    private static @Nullable VisitTime time(@Nullable Visit visit, ZoneId zone) {
        return visit == null ? null : VisitTime.of(visit, zone);
    }

    private static String visit(@Nullable Visit visit, ZoneId zone) {
        return visit == null ? "not planned" : "%s, %s".formatted(Words.moment(visit.start(), zone), visit.crew());
    }

    private static String why(PlanChange change) {
        if (!change.why().isEmpty())
            return change.why().stream().map(PlanChanges::words).collect(Collectors.joining("; "));
        return switch (change.kind()) {
            case MOVED -> "the planner found it better so";
            case ADDED, DROPPED, SAME -> "";
        };
    }

    private static String words(Why why) {
        String detail = why.detail();
        if (detail.isEmpty()) return why.reason().words();
        return switch (why.reason()) {
            case SHUT, NO_SHIFT -> detail;
            case DELIVERY -> "%s, on %s".formatted(why.reason().words(), date(LocalDate.parse(detail)));
            case FOLLOWS -> "its %s ends later now".formatted(detail);
            case ROOM -> "%s for the %s".formatted(why.reason().words(), detail);
            case DONE, TIME_PASSED, LEFT_OUT, PLACED, RETURNED, PINNED ->
                "%s: %s".formatted(why.reason().words(), detail);
        };
    }

    private static String date(LocalDate date) {
        return "%s %s".formatted(Words.weekday(date), Words.date(date));
    }

    private static List<Cost> costs(PlanComparison compared, long published, long proposal) {
        Stream<Cost> terms = compared.ledger().stream()
                .map(term -> new Cost(LedgerSheet.term(term.term()), term.published(), term.proposed(), term.more()));
        return Stream.concat(terms, Stream.of(new Cost("Sum", published, proposal, proposal - published)))
                .toList();
    }
}
