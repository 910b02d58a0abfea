package drylap.bench;

import drylap.papers.CrewDayPaper;
import drylap.papers.DaySheet;
import drylap.papers.DaySheets;
import drylap.papers.Paper;
import java.util.Arrays;
import java.util.Locale;

/** How long a crew's day takes to print: the first time in a fresh JVM, and the median of nine more. */
final class PapersBench {
    private static final int[] VISITS = {40, 10, 1};
    private static final int TIMES = 9;

    private PapersBench() {}

    static boolean run() {
        System.out.println("| Visits | First, ms | Median, ms | KB |\n|---:|---:|---:|---:|");
        for (int visits : VISITS) {
            DaySheet day = DaySheets.of(visits);
            double first = milliseconds(day);
            double[] more = new double[TIMES];
            Arrays.setAll(more, _ -> milliseconds(day));
            Arrays.sort(more);
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %.0f | %.0f | %d |%n",
                    visits,
                    first,
                    more[TIMES / 2],
                    CrewDayPaper.pdf(day, Paper.A4).length >> 10);
        }
        return true;
    }

    private static double milliseconds(DaySheet day) {
        long start = System.nanoTime();
        CrewDayPaper.pdf(day, Paper.A4);
        return (System.nanoTime() - start) / 1e6;
    }
}
