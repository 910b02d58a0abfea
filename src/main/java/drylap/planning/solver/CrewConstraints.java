package drylap.planning.solver;

import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_HARD;
import static org.optaplanner.core.api.score.stream.Joiners.equal;
import static org.optaplanner.core.api.score.stream.Joiners.overlapping;

import drylap.kernel.Task;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;

/** Hard rules that speak of one crew and its day, or of one task and its hours. */
final class CrewConstraints {
    Constraint[] all(ConstraintFactory factory) {
        return new Constraint[] {
            twoTasksAtOnce(factory),
            crewNotTrained(factory),
            noTimeForRoadAndSetUp(factory),
            backAfterTheLimit(factory),
            workInTheBreak(factory),
            installBeforeDelivery(factory),
            workInShutHours(factory),
            pinnedVisitMoved(factory),
            workBeforeThePlanStarts(factory)
        };
    }

    Constraint twoTasksAtOnce(ConstraintFactory factory) {
        return planned(factory)
                .join(planned(factory), equal(Stop::crew), overlapping(Stop::start, Stop::end))
                .filter((one, other) -> precedes(one, other))
                .penalizeLong(ONE_HARD, (one, other) -> Math.min(one.end(), other.end()) - other.start())
                .asConstraint("Crew does two tasks at once");
    }

    /** Counts each pair once, the earlier start first. */
    private static boolean precedes(Stop one, Stop other) {
        if (one.start() != other.start()) return one.start() < other.start();
        int byOpening = one.opening().compareTo(other.opening());
        return byOpening != 0 ? byOpening < 0 : one.task().compareTo(other.task()) < 0;
    }

    Constraint crewNotTrained(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> !stop.where().able())
                .penalize(ONE_HARD)
                .asConstraint("Crew is not trained for the task");
    }

    Constraint noTimeForRoadAndSetUp(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> early(stop) > 0)
                .penalizeLong(ONE_HARD, CrewConstraints::early)
                .asConstraint("No time for road and set-up");
    }

    private static long early(Stop stop) {
        Stop.When when = stop.where();
        return (long) when.free() + when.travel() + when.setup() - when.start();
    }

    Constraint backAfterTheLimit(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> stop.end() + stop.where().wayBack()
                        > stop.where().shift().limit())
                .penalizeLong(
                        ONE_HARD,
                        stop -> stop.end()
                                + stop.where().wayBack()
                                - stop.where().shift().limit())
                .asConstraint("Crew is back after its limit");
    }

    Constraint workInTheBreak(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> stop.start() < stop.where().shift().breakUntil()
                        && stop.end() > stop.where().shift().breakFrom())
                .penalize(ONE_HARD)
                .asConstraint("Work in the break");
    }

    Constraint installBeforeDelivery(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop ->
                        stop.is(Task.INSTALL) && stop.start() < stop.what().earliest())
                .penalize(ONE_HARD)
                .asConstraint("Install before delivery");
    }

    Constraint workInShutHours(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> !stop.where().open())
                .penalize(ONE_HARD)
                .asConstraint("Work in shut hours");
    }

    Constraint pinnedVisitMoved(ConstraintFactory factory) {
        return factory.forEach(Stop.class)
                .filter(CrewConstraints::pinnedElsewhere)
                .penalize(ONE_HARD)
                .asConstraint("Pinned visit moved");
    }

    private static boolean pinnedElsewhere(Stop stop) {
        Stop.Before before = stop.what().before();
        if (before == null || !before.pinned()) return false;
        return !stop.planned() || stop.crew() != before.crew() || stop.start() != before.start();
    }

    Constraint workBeforeThePlanStarts(ConstraintFactory factory) {
        return planned(factory)
                .filter(stop -> stop.start() < 0)
                .filter(stop ->
                        stop.what().before() == null || !stop.what().before().pinned())
                .penalize(ONE_HARD)
                .asConstraint("Work before the plan starts");
    }

    static UniConstraintStream<Stop> planned(ConstraintFactory factory) {
        return factory.forEach(Stop.class).filter(Stop::planned);
    }
}
