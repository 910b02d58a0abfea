package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.lang.reflect.Method;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.Constraint;

class EveryConstraintTests {
    private static final List<Class<?>> STATED_IN =
            List.of(CrewConstraints.class, OrderConstraints.class, AbsenceConstraints.class, CostConstraints.class);

    private static Stream<Method> constraints() {
        return STATED_IN.stream()
                .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .filter(method -> method.getReturnType() == Constraint.class);
    }

    @Test
    void every_constraint_has_a_test_class_of_its_name() {
        assertThat(constraints()).hasSizeGreaterThan(20).allSatisfy(constraint -> {
            String name = constraint.getName();
            String tests = Character.toUpperCase(name.charAt(0)) + name.substring(1) + "Tests";
            assertThatCode(() -> Class.forName(getClass().getPackageName() + "." + tests))
                    .as(name)
                    .doesNotThrowAnyException();
        });
    }
}
