package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.Locale;

/** Searches published job shops with three seeds each, until the proved optimum or the end of the time, and prints a table. */
public final class JobShopBench {
    private static final int SHORT_S = 10;
    private static final int LONG_S = 60;

    private JobShopBench() {}

    /** Prints the table. */
    public static void run() {
        System.out.println("| Job shop | Optimum | Seconds allowed | Seed | Found | Gap | Seconds used | Moves |");
        System.out.println("|---|---:|---:|---:|---:|---:|---:|---:|");
        JobShopSearch.search(JobShop.LA01, request(1, 0), 0); // warms the machine up
        for (JobShop shop : JobShop.ALL) for (int seed = 1; seed <= 3; seed++) row(shop, seed);
    }

    private static void row(JobShop shop, int seed) {
        int seconds = shop == JobShop.FT10 ? LONG_S : SHORT_S;
        JobShopSearch.Result found = JobShopSearch.search(shop, request(seconds, seed), shop.optimum());
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %.1f %% | %.1f | %,d |%n",
                shop,
                shop.optimum(),
                seconds,
                seed,
                found.end(),
                100.0 * (found.end() - shop.optimum()) / shop.optimum(),
                found.seconds(),
                found.moves());
    }

    private static PlanRequest request(int seconds, int seed) {
        return new PlanRequest(null, Duration.ofSeconds(seconds), null, seed);
    }
}
