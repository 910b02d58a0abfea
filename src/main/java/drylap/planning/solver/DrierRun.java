package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.List;

/**
 * Draws a move of installs that stand in rain to the driest hours of a drier day of some crew: one unit, or what follows it that day as well,
 * since weather that is bad for one is bad for its neighbours.
 */
final class DrierRun {
    /** Of so many units the one with the greatest chance of rain is moved, of so many days to the driest. */
    private static final int UNITS = 12;

    private static final int DAYS = 4;
    private static final int RUNS_PERCENT = 60;
    private static final int LONGEST_RUN = 8;
    private static final int DAY = 1440;
    /** Thousandths of a chance that a day nearer is worth. */
    private static final int NEARER = 10;

    private static final int CERTAIN = 1000;

    /** Thousandths of a chance that a move is to save, all its units together, and how often one is looked for that does where there are many units. */
    private static final int LEAST_SAVED = 50;

    private static final int LOOKS = 6;

    private final Lots lots;
    private final Schedule schedule;
    /** What the last move drawn saves, in thousandths. */
    private int saved;

    private DrierRun(Lots lots) {
        this.lots = lots;
        schedule = lots.lists.working;
    }

    static ListMove draw(Lots lots) {
        DrierRun drier = new DrierRun(lots);
        ListMove move = drier.draw();
        int most = Cooling.isMany(lots.lists.getUnits()) ? LOOKS : 1;
        for (int looks = 1; looks < most && drier.saved < LEAST_SAVED; looks++) move = drier.draw();
        return move;
    }

    private ListMove draw() {
        Unit unit = wettest();
        Route from = schedule.positions.route(unit);
        int at = schedule.positions.place(unit);
        Route to = lots.random.nextInt(3) == 0 ? from : lots.someRoute(unit);
        saved = 0;
        if (unit.kind != Task.INSTALL || to.crew().days() == 0) return new Wait(from, at, 0);
        int length = lots.random.nextInt(100) < RUNS_PERCENT ? sameDay(from.getUnits(), at, to.crew()) : 1;
        DryMoment driest = driest(unit, length, to.crew());
        for (Unit one : from.getUnits().subList(at, at + length)) saved += risk(one) - driest.risk();
        return lots.run(unit, length, to, schedule.placeAt(to, driest.minute())).waitingUntil(driest.minute());
    }

    private Unit wettest() {
        Unit wettest = lots.unit();
        int most = risk(wettest);
        for (int i = 1; i < UNITS; i++) {
            Unit unit = lots.unit();
            int risk = risk(unit);
            if (risk <= most) continue;
            wettest = unit;
            most = risk;
        }
        return wettest;
    }

    /** In thousandths; below 0 what rain does not harm. */
    private int risk(Unit unit) {
        if (unit.kind != Task.INSTALL) return -1;
        return schedule.tally.risk(unit.tasks[0]);
    }

    private int sameDay(List<Unit> units, int at, CrewCalendar crew) {
        int day = schedule.day[units.get(at).tasks[0].index];
        int length = 1;
        while (length < LONGEST_RUN && at + length < units.size() && movesAlong(units.get(at + length), day, crew))
            length++;
        return length;
    }

    private boolean movesAlong(Unit unit, int day, CrewCalendar crew) {
        return lots.lists.focus.has(unit) && unit.fits(crew) && schedule.day[unit.tasks[0].index] == day;
    }

    private DryMoment driest(Unit unit, int length, CrewCalendar crew) {
        int now = Math.max(0, schedule.start[unit.tasks[0].index]);
        DryMoment best = new DryMoment(0, CERTAIN);
        long least = Long.MAX_VALUE;
        for (int i = 0; i < DAYS; i++) {
            int day = lots.random.nextInt(crew.days());
            DryMoment driest = lots.driest(unit, crew, day);
            long cost = (long) driest.risk() * length + Math.abs(driest.minute() - now) / DAY * NEARER;
            if (driest.risk() == DryStart.NO_PLACE || cost >= least) continue;
            least = cost;
            best = driest;
        }
        return best;
    }
}
