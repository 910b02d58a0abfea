package drylap.bench;

import drylap.DbTest;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.ScheduleResult.Taken;
import drylap.planning.ScheduleTaking;
import drylap.planning.WindowSchedules;
import drylap.security.Person;
import drylap.security.TestPeople;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.SiteWithWalls;
import drylap.windowschedule.Takings;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;

/**
 * How long a window schedule of 600 rows takes: to open the XLSX and find its columns, to work out what every row
 * becomes (asked at every cell that a person puts right), and to work it out again over a folder that has the openings; and
 * to write it to an embedded PostgreSQL with its syncs on, history and news with it, in one transaction. The first time
 * has the compiling of the code in it; told as well is the median of many.
 */
final class ImportBench {
    private static final int TIMES = 21;

    private ImportBench() {}

    static boolean run() {
        byte[] file = SiteWithWalls.sixHundred();
        JobFolder folder = SiteWithWalls.folder();
        System.out.println("| 600 rows | Openings | First time, ms | Median of %d, ms |".formatted(TIMES));
        System.out.println("|---|---:|---:|---:|");
        Draft draft = measure("opened", () -> SiteWithWalls.draft("six-hundred.xlsx", file), _ -> 0);
        Outcome faulty =
                measure("worked out, 14 faults", () -> Outcomes.of(draft, folder, Set.of()), ImportBench::openings);
        Draft right = draft;
        for (var fault : faulty.faults()) right = right.leavingOut(fault.row(), true);
        Draft sound = right;
        Outcome outcome =
                measure("worked out, sound", () -> Outcomes.of(sound, folder, Set.of()), ImportBench::openings);
        JobFolder after = Takings.over(folder, outcome);
        measure("worked out again over them", () -> Outcomes.of(sound, after, Set.of()), ImportBench::openings);
        return outcome.sound() && written(folder, Takings.of(sound, outcome));
    }

    /** Each time into a folder of its own, which is made before the clock starts, so that each writes the same rows. */
    private static boolean written(JobFolder folder, ScheduleTaking taking) {
        try (var context = new SpringApplicationBuilder(DbTest.Application.class)
                .web(WebApplicationType.NONE)
                .initializers(new DbTest.FreshDatabase())
                .run("--drylap.work.regular=false", "--logging.level.root=warn")) {
            var folders = context.getBean(JobFolders.class);
            var schedules = context.getBean(WindowSchedules.class);
            Person who = context.getBean(TestPeople.class).scheduler();
            Deque<FolderId> fresh = new ArrayDeque<>();
            for (int i = 0; i <= TIMES; i++) fresh.add(folders.save("bench", folder));
            var last = measure(
                    "written to the database",
                    () -> schedules.take(who, fresh.remove(), taking),
                    result -> result instanceof Taken taken ? taken.added() : 0);
            return last instanceof Taken;
        }
    }

    private static int openings(Outcome outcome) {
        return (int) outcome.openings().count();
    }

    private static <T> T measure(String name, Supplier<T> work, ToIntFunction<T> openings) {
        double[] times = new double[TIMES];
        long before = System.nanoTime();
        T result = work.get();
        double first = (System.nanoTime() - before) / 1e6;
        for (int i = 0; i < TIMES; i++) {
            long begun = System.nanoTime();
            result = work.get();
            times[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(times);
        System.out.printf(
                Locale.ROOT, "| %s | %d | %.1f | %.1f |%n", name, openings.applyAsInt(result), first, times[TIMES / 2]);
        return result;
    }
}
