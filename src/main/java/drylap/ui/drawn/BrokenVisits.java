package drylap.ui.drawn;

import drylap.audit.PlanBreaks;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Visit;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the day has broken of the published plan, a line for each visit, in the order of their times.
 *
 * @param rows crews' whole days, which have no visit, come last
 */
public record BrokenVisits(List<Row> rows) {
    public static final BrokenVisits NONE = new BrokenVisits(List.of());

    /** @param opening absent, as is the task, where a crew's whole day is broken */
    public record Row(
            @Nullable OpeningId opening,
            @Nullable Task task,
            @Nullable VisitTime time,
            String when,
            String why) {}

    public static BrokenVisits of(Speech say, FolderShown shown, PlanBreaks breaks) {
        Map<Visit, List<String>> whys = new LinkedHashMap<>();
        breaks.slipped().forEach(visit -> add(whys, visit, say.it("its time has passed, and it is not done")));
        List<Row> days = new ArrayList<>();
        for (var broken : breaks.broken()) {
            if (broken.visit() != null)
                add(whys, broken.visit(), say.it(broken.breach().what()));
            else
                days.add(new Row(
                        null,
                        null,
                        null,
                        say.it(broken.breach().where()),
                        say.it(broken.breach().what())));
        }
        List<Row> rows = whys.keySet().stream()
                .filter(visit -> shown.has(visit.opening()))
                .sorted(java.util.Comparator.comparing(Visit::start).thenComparing(Visit::opening))
                .map(visit -> row(say, shown, visit, whys.getOrDefault(visit, List.of())))
                .collect(Collectors.toCollection(ArrayList::new));
        rows.addAll(days);
        return new BrokenVisits(List.copyOf(rows));
    }

    private static void add(Map<Visit, List<String>> whys, Visit visit, String why) {
        whys.computeIfAbsent(visit, _ -> new ArrayList<>()).add(why);
    }

    private static Row row(Speech say, FolderShown shown, Visit visit, List<String> whys) {
        var zone = shown.site(visit.facade().site()).zone();
        return new Row(
                visit.opening(),
                visit.task(),
                VisitTime.of(visit, zone),
                "%s, %s".formatted(say.moment(visit.start(), zone), visit.crew()),
                whys.stream().distinct().collect(Collectors.joining("; ")));
    }
}
