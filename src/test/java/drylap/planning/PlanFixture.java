package drylap.planning;

import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Plans about a folder, with something in every table; legal in form, not by the rules of planning. */
final class PlanFixture {
    private static final Instant START = Instant.parse("2026-04-13T07:00:00Z");

    private PlanFixture() {}

    /** What the planner makes of a folder; called from here so that its threads need no class that is still being set up. */
    static Plan planned(JobFolder folder, long moves) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, moves, 1), _ -> {}, () -> false);
    }

    static Plan of(JobFolder folder, long seed) {
        Random random = new Random(seed);
        return new Plan(
                START,
                START.plus(Duration.ofDays(30)),
                visits(folder),
                folder.openings().stream()
                        .map(opening -> new UnplannedTask(
                                opening.id(),
                                any(Task.values(), random),
                                any(UnplannedReason.values(), random),
                                "waits for “wrap”\n\t\\of W-1"))
                        .toList(),
                folder.openings().stream()
                        .limit(9)
                        .map(opening -> new CoverNow(
                                opening.id(),
                                maybe(START, random),
                                START.plusSeconds(random.nextInt(9_999)),
                                random.nextInt(90)))
                        .toList(),
                folder.facades().stream()
                        .map(facade -> new OpenWindow(
                                facade.id(),
                                any(Task.values(), random),
                                new TimeWindow(START, START.plusSeconds(1 + random.nextInt(9_999)))))
                        .toList(),
                ledger(random));
    }

    private static List<Visit> visits(JobFolder folder) {
        List<Visit> visits = new ArrayList<>();
        for (PublishedVisit published : folder.published()) {
            Visit visit = published.visit();
            visits.add(new Visit(
                    visit.crew(),
                    visit.date(),
                    visits.size() + 1,
                    visit.facade(),
                    visit.level(),
                    visit.opening(),
                    visit.task(),
                    visit.start(),
                    visit.end()));
        }
        return visits;
    }

    private static Ledger ledger(Random random) {
        List<Ledger.Line> lines = new ArrayList<>();
        for (LedgerTerm term : LedgerTerm.values()) {
            long amount = random.nextInt(1_000);
            lines.add(new Ledger.Line(term, amount, 7, 7 * amount));
        }
        return new Ledger(
                lines,
                0,
                random.nextInt(99_999),
                lines.stream().mapToLong(Ledger.Line::cost).sum());
    }

    private static <T> T any(T[] values, Random random) {
        return values[random.nextInt(values.length)];
    }

    private static <T> @Nullable T maybe(T value, Random random) {
        return random.nextBoolean() ? value : null;
    }
}
