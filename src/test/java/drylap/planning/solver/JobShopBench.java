package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.Locale;

/** Searches published job shops with three seeds each, until the proved optimum or the end of the time, and prints a table. */
public final class JobShopBench {
    private static final int SHORT_S = 10;
    private static final int LONG_S = 60;

    private JobShopBench() {}

    /** Prints the table; whether each came to 2 % above its optimum or nearer. */
    public static boolean run() {
        System.out.println("| Job shop | Optimum | Seconds allowed | Seed | Found | Gap | Seconds used | Moves |");
        System.out.println("|---|---:|---:|---:|---:|---:|---:|---:|");
        JobShopSearch.search(JobShop.LA01, request(1, 0), 0); // warms the machine up
        boolean near = true;
        for (JobShop shop : JobShop.ALL) for (int seed = 1; seed <= 3; seed++) near &= row(shop, seed);
        return near;
    }

    private static boolean row(JobShop shop, int seed) {
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
        return found.end() * 100 <= shop.optimum() * 102;
    }

    private static PlanRequest request(int seconds, int seed) {
        return new PlanRequest(null, Duration.ofSeconds(seconds), null, seed);
    }
}
