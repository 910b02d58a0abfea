package drylap.planning.solver;

import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/**
 * A search by simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983) that cools once, by a constant factor, so that it is long where
 * little is still taken that makes the plan dearer. What a move may cost is drawn before it is decided rather than after, which is the
 * same to the plan and lets most moves be left off early.
 */
final class Annealing {
    /** How much colder it is at the end. */
    private static final double COOLER = 20;

    /** Draws between two looks at the clock. */
    private static final int DRAWS_BETWEEN_LOOKS = 16;

    private final CrewLists lists;
    private final Schedule schedule;
    private final Random random;
    private final MoveMaker.Draw draw;
    private final Consumer<CrewLists> better;
    private final boolean weighsOut;
    private CrewLists best;

    /**
     * @param better is told of each plan that is better than all before it, in lists of its own
     * @param weighsOut whether on the way what is out is weighed against costs, a point of medium cost as one of soft cost, rather than coming before
     *     them; what is best is then judged as ever
     */
    Annealing(CrewLists lists, long seed, Consumer<CrewLists> better, boolean weighsOut) {
        this.lists = lists;
        this.better = better;
        this.weighsOut = weighsOut;
        schedule = new Schedule(lists.problem(), new Relief());
        schedule.bind(lists.getRoutes(), lists.notBefore);
        schedule.settle();
        lists.working = schedule;
        random = new SwiftRandom(seed);
        draw = new MoveMaker.Draw(lists, random);
        best = copy();
    }

    private CrewLists copy() {
        lists.setScore(CrewLists.scoreOf(schedule.tally));
        return new CrewLists.Cloner().cloneSolution(lists);
    }

    /**
     * Searches until all is used or it is stopped.
     *
     * @param heat the soft cost by which a plan may at first get worse with a chance of one in e
     * @param used what part of its time or moves is used, 0 to 1
     * @return the best lists
     */
    CrewLists run(long heat, DoubleSupplier used, BooleanSupplier stop) {
        while (!stop.getAsBoolean()) {
            double part = used.getAsDouble();
            if (part >= 1) break;
            double now = heat * Math.pow(COOLER, -part);
            for (int i = 0; i < DRAWS_BETWEEN_LOOKS; i++) draw(now);
        }
        return best;
    }

    private void draw(double heat) {
        ListMove move = draw.next();
        if (!move.idle(lists)) decide(move, (long) (heat * -Math.log(1 - random.nextDouble())));
    }

    private void decide(ListMove move, long mayCost) {
        long medium = schedule.tally.medium();
        long soft = schedule.tally.soft();
        ListMove undo = move.opposite(lists);
        move.change(lists.toSchedule, lists);
        boolean whole = settle(soft + mayCost);
        lists.meter.count();
        if (whole && costsAtMost(medium, soft + mayCost)) {
            schedule.taken(soft);
            keepBest();
        } else lists.takeBack(undo);
    }

    /** False where it left off. */
    private boolean settle(long mostSoft) {
        if (!weighsOut) return schedule.settleUnlessDearer(mostSoft);
        schedule.settle();
        return true;
    }

    private boolean costsAtMost(long medium, long soft) {
        long now = schedule.tally.medium();
        if (weighsOut) return now + schedule.tally.soft() <= medium + soft;
        return now < medium || now == medium && schedule.tally.soft() <= soft;
    }

    private void keepBest() {
        if (CrewLists.scoreOf(schedule.tally).compareTo(best.getScore()) <= 0) return;
        best = copy();
        better.accept(best);
    }
}
