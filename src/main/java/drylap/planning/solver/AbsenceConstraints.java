package drylap.planning.solver;

import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_MEDIUM;

import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;

/** Work that a plan leaves out, and openings that it leaves open in the rain. */
final class AbsenceConstraints {
    Constraint[] all(ConstraintFactory factory) {
        return new Constraint[] {taskUnplanned(factory), openingExposedToRain(factory)};
    }

    Constraint taskUnplanned(ConstraintFactory factory) {
        return factory.forEach(Stop.class)
                .filter(stop -> !stop.planned())
                .penalizeLong(ONE_MEDIUM, stop -> (1L + stop.what().priority()) * 1000)
                .asConstraint("Task is not planned");
    }

    Constraint openingExposedToRain(ConstraintFactory factory) {
        return factory.forEach(Stop.class)
                .filter(stop -> stop.what().coverBy() != TimeAxis.NEVER)
                .filter(stop -> stop.unfinishedAt(stop.what().coverBy()))
                .penalizeLong(ONE_MEDIUM, stop -> Problem.EXPOSED_COST)
                .asConstraint("Opening stands open in the next rain");
    }
}
