package drylap.planning.solver;

import java.util.function.Function;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;

/** What one constraint says of some stops. */
final class Verdict {
    /** One for all tests: building it takes far longer than asking it. */
    private static final ConstraintVerifier<PlanConstraints, CrewLists> VERIFIER =
            ConstraintVerifier.build(new PlanConstraints(), CrewLists.class, Route.class);

    private final Function<ConstraintFactory, Constraint> constraint;

    private Verdict(Function<ConstraintFactory, Constraint> constraint) {
        this.constraint = constraint;
    }

    static Verdict of(Function<ConstraintFactory, Constraint> constraint) {
        return new Verdict(constraint);
    }

    /** Asserts the amount that the stops together are penalized by. */
    void amount(long expected, Stop... stops) {
        VERIFIER.verifyThat((provider, factory) -> constraint.apply(factory))
                .given((Object[]) stops)
                .penalizesBy(expected);
    }
}
