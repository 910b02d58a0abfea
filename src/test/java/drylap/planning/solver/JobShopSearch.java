package drylap.planning.solver;

import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import java.util.function.BooleanSupplier;

/** The planner's own search, as a region gets it, of a problem that no folder compiles to. */
final class JobShopSearch {
    /** @param end the end of the last operation, in units of the job shop's time */
    record Result(Plan plan, long end, long moves, double seconds) {}

    private JobShopSearch() {}

    /** Searches until time or moves of the request are used up, or the end of the last operation is as early as is enough. */
    static Result search(JobShop shop, PlanRequest request, int enough) {
        long began = System.nanoTime();
        RegionSearch search = new RegionSearch(Construction.firstLists(JobShopProblem.of(shop), new Meter()));
        BooleanSupplier stop = () -> search.medium() == 0 && search.soft() < (enough + 1L) * JobShopProblem.END_WEIGHT;
        search.improveFirst(stop);
        search.search(request, stop, LocalSearchPlanner.LANES);
        double seconds = (System.nanoTime() - began) / 1e9;
        Plan plan = search.plan();
        return new Result(plan, end(plan), search.moves(), seconds);
    }

    private static long end(Plan plan) {
        return plan.ledger().lines().stream()
                .filter(line -> line.term() == LedgerTerm.LATE_HANDOVER)
                .mapToLong(Ledger.Line::amount)
                .sum();
    }
}
