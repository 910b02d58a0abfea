package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rights as people agreed on them, written down a second time: x may, . may not. */
class RightsMatrixTests {
    private static final List<Role> COLUMNS =
            List.of(Role.SCHEDULER, Role.WINDOW_CREW, Role.FOLLOW_ON, Role.TESTER, Role.ADMINISTRATOR, Role.CONTRACTOR);

    //                           scheduler, window crew, follow-on, tester, administrator, contractor
    private static final String AGREED = """
            SEE_START             x . . . x x
            CHANGE_SAMPLE         x . . . x x
            SEE_WEEK_SHEET        x . . . . x
            SEE_WALLS             x . . . . x
            SEE_OPEN_HOURS        x . . . . x
            SEE_FOLDERS           x . . . . x
            IMPORT_FOLDER         x . . . . x
            PROPOSE_PLAN          x . . . . x
            MOVE_VISIT            x . . . . x
            PIN_VISIT             x . . . . x
            PUBLISH_PLAN          x . . . . x
            SEE_ODDS              x . . . . x
            RECKON_ODDS           x . . . . x
            SEE_CREWS             x . . . . x
            CHANGE_ABSENCES       x . . . . x
            SEE_CALENDAR_LINKS    x x x x . x
            CHANGE_CALENDAR_LINKS x . . . . x
            SEE_RULES             x . . . . x
            CHANGE_RULES          x . . . . x
            CHANGE_LABOUR         x . . . . x
            CHOOSE_FORECAST       x . . . . x
            SEE_SEASON            x . . . . x
            CHANGE_CLIMATE        x . . . . x
            SEE_OPENINGS          x x x x . x
            SEE_CREW_DAY          x x . x . x
            MARK_INSTALL          x x . . . x
            MARK_FOLLOW_ON        . . x . . .
            UNDO_MARK             x x x x . x
            SEE_PHOTO             x x x x . x
            ADD_PHOTO             x x x x . x
            CALL_RAIN             x x . . . x
            MEASURE_OPENING       x x . . . x
            SEE_APRONS            x . x . . x
            PASS_HOLD_POINT       x x . . . x
            RELEASE               x x . . . x
            ACCEPT                . . x . . .
            RETURN                . . x . . .
            RECORD_WATER_TEST     x . . x . x
            BOOK_CREW_DAY         . . x . . .
            SEE_HANDOFF_RECORD    x x x x . x
            SEE_HISTORY           x . . . x x
            SEE_PEOPLE            . . . . x x
            CHANGE_PEOPLE         . . . . x x
            SEE_MACHINE           . . . . x x
            """;

    @TestFactory
    Stream<DynamicTest> each_role_may_what_was_agreed_and_nothing_else() {
        return AGREED.lines().flatMap(line -> {
            var words = Arrays.asList(line.split(" +"));
            var operation = Operation.valueOf(words.getFirst());
            return COLUMNS.stream()
                    .map(role -> DynamicTest.dynamicTest(
                            role.words() + " / " + operation.words(),
                            () -> assertThat(person(role).may(operation))
                                    .isEqualTo(
                                            words.get(1 + COLUMNS.indexOf(role)).equals("x"))));
        });
    }

    @Test
    void the_agreement_names_every_operation_once_and_every_role() {
        assertThat(AGREED.lines().map(line -> line.split(" +")[0]))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Operation.values()).map(Enum::name).toList());
        assertThat(COLUMNS).containsExactlyInAnyOrder(Role.values());
    }

    @Test
    void nobody_may_anything_at_a_site_that_is_not_theirs() {
        var elsewhere = new SiteId("elsewhere");
        for (Role role : Role.values())
            for (Operation operation : Operation.values())
                assertThat(person(role).may(operation, elsewhere))
                        .as("%s %s", role, operation)
                        .isFalse();
    }

    private static Person person(Role role) {
        return new Person(new PersonId(1), "p", "P", role, Reach.of(List.of(new SiteId("here"))), null, false);
    }
}
