package drylap.planning.solver;

import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.util.function.BooleanSupplier;

/** The planner's own search, as a region gets it, of a problem that no folder compiles to. */
final class JobShopSearch {
    /** @param end the end of the last operation, in units of the job shop's time */
    record Result(Plan plan, long end, long moves, double seconds) {}

    private JobShopSearch() {}

    /** Searches until time or moves of the request are used up, or the end of the last operation is as early as is enough. */
    static Result search(JobShop shop, PlanRequest request, int enough) {
        long began = System.nanoTime();
        CrewLists first = Construction.firstLists(JobShopProblem.of(shop), new Meter());
        RegionSearch search = of(first);
        BooleanSupplier stop = () -> search.medium() == 0 && search.soft() < (enough + 1L) * JobShopProblem.END_WEIGHT;
        search.improveFirst(stop);
        search.search(request, stop);
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

    /** A region's search begins with a folder; here it begins with lists, which only its inside can. */
    private static RegionSearch of(CrewLists first) {
        try {
            Constructor<RegionSearch> inside = RegionSearch.class.getDeclaredConstructor(CrewLists.class);
            inside.setAccessible(true);
            RegionSearch search = inside.newInstance(first);
            Field meter = RegionSearch.class.getDeclaredField("meter");
            meter.setAccessible(true);
            first.meter = (Meter) meter.get(search);
            return search;
        } catch (ReflectiveOperationException changed) {
            throw new IllegalStateException("the search of a region has another inside now", changed);
        }
    }
}
