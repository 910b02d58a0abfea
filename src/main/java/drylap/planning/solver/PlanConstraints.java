package drylap.planning.solver;

import java.util.stream.Stream;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;

/** The planning contract as constraints: what breaks a plan, what work is left out, and what a plan costs. */
public class PlanConstraints implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return Stream.of(
                        new CrewConstraints().all(factory),
                        new OrderConstraints().all(factory),
                        new AbsenceConstraints().all(factory),
                        new CostConstraints().all(factory))
                .flatMap(Stream::of)
                .toArray(Constraint[]::new);
    }
}
