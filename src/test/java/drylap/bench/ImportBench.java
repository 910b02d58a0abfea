package drylap.bench;

import drylap.planning.JobFolder;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.SiteWithWalls;
import drylap.windowschedule.Takings;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * How long a window schedule of 600 rows takes, without the database: to open the XLSX and find its columns, to work out what every row
 * becomes (asked at every cell that a person puts right), and to work it out again over a folder that has the openings. The first time
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
        return outcome.sound();
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
