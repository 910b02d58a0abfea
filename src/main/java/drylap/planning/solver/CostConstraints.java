package drylap.planning.solver;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.max;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.min;

import drylap.kernel.Task;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;

/** The terms of the ledger; their weights come from {@link PlanWeights}. */
final class CostConstraints {
    private static final int HOUR = 60;

    Constraint[] all(ConstraintFactory factory) {
        return new Constraint[] {
            lateHandover(factory),
            crewDays(factory),
            travel(factory),
            setup(factory),
            overtime(factory),
            openCourse(factory),
            rainRisk(factory),
            changed(factory)
        };
    }

    Constraint lateHandover(ConstraintFactory factory) {
        return factory.forEach(Stop.class)
                .filter(stop -> stop.is(Task.CLAD) && stop.what().due() != TimeAxis.NEVER)
                .groupBy(Stop::facade, stop -> stop.what().due(), max(CostConstraints::cladEnd))
                .filter((facade, due, end) -> end > due)
                .penalizeConfigurableLong((facade, due, end) -> Math.ceilDiv(end - due, HOUR))
                .asConstraint(PlanWeights.LATE_HANDOVER);
    }

    private static int cladEnd(Stop stop) {
        return stop.planned() ? stop.end() : stop.what().horizonEnd();
    }

    Constraint crewDays(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .groupBy(Stop::crew, Stop::date)
                .penalizeConfigurableLong((crew, date) -> 1)
                .asConstraint(PlanWeights.CREW_DAYS);
    }

    Constraint travel(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .penalizeConfigurableLong(
                        stop -> stop.where().travel() + stop.where().wayBack())
                .asConstraint(PlanWeights.TRAVEL);
    }

    Constraint setup(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .penalizeConfigurableLong(stop -> stop.where().setup())
                .asConstraint(PlanWeights.SETUP);
    }

    Constraint overtime(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .filter(stop -> stop.where().lastOfDay() && overtime(stop) > 0)
                .penalizeConfigurableLong(CostConstraints::overtime)
                .asConstraint(PlanWeights.OVERTIME);
    }

    private static long overtime(Stop stop) {
        return stop.end() + stop.where().wayBack() - stop.where().shift().end();
    }

    Constraint openCourse(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .filter(stop -> stop.is(Task.INSTALL))
                .groupBy(Stop::facade, Stop::level, min(Stop::start), max(Stop::end))
                .penalizeConfigurableLong((facade, level, first, last) -> Math.ceilDiv(last - first, HOUR))
                .asConstraint(PlanWeights.OPEN_COURSE);
    }

    Constraint rainRisk(ConstraintFactory factory) {
        return CrewConstraints.planned(factory)
                .filter(stop -> stop.where().rain() > 0)
                .penalizeConfigurableLong(stop -> stop.where().rain())
                .asConstraint(PlanWeights.RAIN_RISK);
    }

    Constraint changed(ConstraintFactory factory) {
        return factory.forEach(Stop.class)
                .filter(CostConstraints::differs)
                .penalizeConfigurableLong(stop -> 1)
                .asConstraint(PlanWeights.CHANGED);
    }

    private static boolean differs(Stop stop) {
        Stop.Before before = stop.what().before();
        if (before == null) return false;
        return !stop.planned() || stop.crew() != before.crew() || !stop.date().equals(before.date());
    }
}
