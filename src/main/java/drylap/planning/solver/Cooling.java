package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;

/**
 * One round of a search by simulated annealing: how hot it begins, and what it may use of the request's time and moves.
 *
 * @param number from 0
 * @param began when the search began, as {@link System#nanoTime}
 * @param meters of the lanes that run side by side
 * @param width how many lanes have a processor at once
 */
record Cooling(
        PlanRequest request, List<Integer> shares, int number, long heat, long began, List<Meter> meters, int width) {
    /** Of the time, in percent. */
    private static final List<Integer> ONE = List.of(100);

    private static final List<Integer> SHARES_OF_FEW = List.of(13, 13, 13, 13, 12, 12, 12, 12);

    /** Fewer moves are not worth a second solver. */
    private static final int LEAST_MOVES = 5_000;

    /** A few units cool in no time, and a region has the time for few moves a unit. */
    private static final Heat OF_FEW = new Heat(400, 4, 1);

    private static final Heat OF_REGION = new Heat(400, 4, 4);
    /** So many moves a unit that much may change at first. */
    private static final Heat OF_SOME = new Heat(1_600, 4, 3);
    /** What matters to many is what is cheap, which only many samples tell alike. */
    private static final Heat OF_MANY = new Heat(1_600, 6, 5);

    private static final int FEW = 60;
    private static final int SOME = 150;

    /** A search without an end cools down in so long, again and again. */
    private static final Duration ENDLESS = Duration.ofSeconds(10);

    static Cooling first(PlanRequest request, CrewLists lists, List<Meter> meters, int width) {
        long heat = heat(lists).of(lists, request.seed());
        return new Cooling(request, shares(request, lists), 0, heat, System.nanoTime(), meters, width);
    }

    /** Of more than a few units one finds more than several. */
    private static List<Integer> shares(PlanRequest request, CrewLists lists) {
        boolean brief = request.moves() != null && request.moves() < LEAST_MOVES;
        return isFew(lists.getUnits()) && !brief ? SHARES_OF_FEW : ONE;
    }

    /** The round after this one; null where none is left. */
    @Nullable
    Cooling next(CrewLists lists) {
        boolean last = number % shares.size() == shares.size() - 1;
        boolean endless = request.time() == null && request.moves() == null;
        if (last && !endless) return null;
        long next = last ? heat(lists).of(lists, request.seed() + number) : heat;
        return new Cooling(request, shares, number + 1, next, began, meters, width);
    }

    /**
     * Whether what is out is weighed against costs, as every other time that a few units cool: where they just fit, many ways from one
     * plan to another lead over some that leave something out.
     */
    boolean weighsOut(List<Unit> units) {
        return isFew(units) && number % 2 == 1;
    }

    private static Heat heat(CrewLists lists) {
        if (isFew(lists.getUnits())) return OF_FEW;
        if (lists.hasty) return OF_REGION;
        return isMany(lists.getUnits()) ? OF_MANY : OF_SOME;
    }

    static boolean isMany(List<Unit> units) {
        return units.size() > SOME;
    }

    static boolean isFew(List<Unit> units) {
        return units.size() <= FEW;
    }

    /** What one lane's solver is told. */
    SolverConfig config(Meter meter) {
        return Search.config(
                new PlanRequest(null, time(), moves(meter), seed(meter)), heat, EnvironmentMode.REPRODUCIBLE);
    }

    /** Of a lane's random numbers. */
    long seed(Meter meter) {
        return request.seed() + (long) number * meters.size() + meters.indexOf(meter);
    }

    /** What part of its time or moves a lane that begins now has used. */
    DoubleSupplier used(Meter meter) {
        Long moves = moves(meter);
        Duration time = time();
        long before = meter.moves();
        long begins = System.nanoTime();
        return () -> Math.max(
                moves == null ? 0 : (double) (meter.moves() - before) / moves,
                time == null ? 0 : (double) (System.nanoTime() - begins) / time.toNanos());
    }

    private @Nullable Duration time() {
        if (request.moves() != null && request.time() == null) return null;
        Duration whole = request.time() == null ? ENDLESS : request.time().minusNanos(System.nanoTime() - began);
        return Duration.ofMillis(Math.max(1, Math.round(whole.toMillis() * share() * width / meters.size())));
    }

    private @Nullable Long moves(Meter meter) {
        if (request.moves() == null) return null;
        double left = (double) request.moves() / meters.size() - meter.moves();
        return Math.max(1, Math.round(left * share()));
    }

    /** Of what is left. */
    private double share() {
        int round = number % shares.size();
        int left = shares.stream().skip(round).mapToInt(share -> share).sum();
        return (double) shares.get(round) / left;
    }
}
