package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import drylap.assembly.Method;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OutcomesTests {
    private static final String TITLES = "Mark,Qty,RO width (mm),RO height (mm),Floor,Elevation,Material,Method\n";
    private static final String NINE = TITLES + "A,3,900,1500,1,North,vinyl,A1\nB,,1000,1500,2,North,vinyl,A1\n";

    private final JobFolder folder = SiteWithWalls.folder();

    private Outcome of(String csv) {
        return Outcomes.of(SiteWithWalls.draft(csv), folder, Set.of());
    }

    /** A folder as it is once a schedule was taken in. */
    private static JobFolder after(JobFolder folder, String csv) {
        Draft draft = SiteWithWalls.draft(csv);
        return Takings.over(folder, Outcomes.of(draft, folder, Set.of()));
    }

    @Test
    void several_of_a_mark_are_numbered_and_one_alone_has_its_name() {
        assertThat(of(NINE).openings())
                .extracting(one -> one.id().value(), OpeningOutcome::kind)
                .containsExactly(
                        tuple("A-1", Kind.NEW), tuple("A-2", Kind.NEW), tuple("A-3", Kind.NEW), tuple("B", Kind.NEW));
        assertThat(of(NINE).missing()).extracting(one -> one.id().value()).contains("QW1-01", "QW2-01");
    }

    @Test
    void the_same_schedule_again_changes_nothing() {
        JobFolder now = after(folder, NINE);
        Outcome again = Outcomes.of(SiteWithWalls.draft(NINE), now, Set.of());
        assertThat(again.openings())
                .hasSize(4)
                .allSatisfy(one -> assertThat(one.kind()).isEqualTo(Kind.SAME));
        assertThat(Takings.over(now, again)).isEqualTo(now);
    }

    @Test
    void a_mark_of_which_there_are_more_keeps_its_first_and_one_of_which_there_are_fewer_keeps_all() {
        JobFolder now = after(folder, NINE);
        Outcome more = Outcomes.of(
                SiteWithWalls.draft(TITLES + "A,1,900,1500,1,North,vinyl,A1\nB,2,1000,1500,2,North,vinyl,A1\n"),
                now,
                Set.of());
        assertThat(more.openings())
                .extracting(one -> one.id().value(), OpeningOutcome::kind)
                .containsExactly(tuple("A-1", Kind.SAME), tuple("B", Kind.SAME), tuple("B-2", Kind.NEW));
        assertThat(more.missing()).extracting(one -> one.id().value()).contains("A-2", "A-3");
    }

    @Test
    void rows_of_one_mark_take_the_openings_of_their_own_wall_and_level_first() {
        String two = TITLES + "A,2,900,1500,1,North,vinyl,A1\nA,2,900,1500,1,East,vinyl,A1\n";
        JobFolder now = after(folder, two);
        // one more on the north wall: those on the east wall keep their names
        Outcome more = Outcomes.of(SiteWithWalls.draft(two.replaceFirst("A,2", "A,3")), now, Set.of());
        assertThat(more.openings())
                .extracting(
                        one -> one.id().value(),
                        OpeningOutcome::kind,
                        one -> one.becomes().facade().facade())
                .containsExactly(
                        tuple("A-1", Kind.SAME, "north"),
                        tuple("A-2", Kind.SAME, "north"),
                        tuple("A-5", Kind.NEW, "north"),
                        tuple("A-3", Kind.SAME, "east"),
                        tuple("A-4", Kind.SAME, "east"));
    }

    @Test
    void what_changed_is_told_and_what_the_row_leaves_out_stays() {
        JobFolder now = after(folder, NINE);
        Outcome changed = Outcomes.of(
                SiteWithWalls.draft("Mark,RO width (mm),RO height (mm)\nB,1200,1500\n")
                        .with(SiteWithWalls.choices()
                                .withStandIns(SiteWithWalls.choices()
                                        .standIns()
                                        .withWall("south")
                                        .withLevel(7)
                                        .withMethod(Method.B))),
                now,
                Set.of());
        var b = changed.openings(Kind.CHANGED).getFirst();
        assertThat(b.differences())
                .containsExactly(new OpeningOutcome.Difference("width", "1000 mm", "1200 mm", false));
        assertThat(b.becomes().method()).isEqualTo(Method.A1);
        assertThat(b.becomes().level()).isEqualTo(2);
    }

    @Test
    void where_work_has_begun_nothing_changes_unless_a_person_agrees_and_the_method_never() {
        JobFolder now = after(folder, NINE);
        Draft draft = SiteWithWalls.draft(TITLES + "B,,1200,1500,2,North,vinyl,B1\n");
        Set<OpeningId> begun = Set.of(new OpeningId("B"));
        Outcome held = Outcomes.of(draft, now, begun);
        assertThat(held.openings(Kind.HELD)).hasSize(1);
        assertThat(Takings.over(now, held)).isEqualTo(now);

        Outcome agreed = Outcomes.of(draft.agreeing(new OpeningId("B"), true), now, begun);
        var becomes = agreed.openings(Kind.CHANGED).getFirst();
        assertThat(becomes.becomes().widthMm()).isEqualTo(1200);
        assertThat(becomes.becomes().method()).isEqualTo(Method.A1);
        assertThat(becomes.differences())
                .extracting(OpeningOutcome.Difference::what, OpeningOutcome.Difference::held)
                .containsExactly(tuple("width", false), tuple("method", true));
    }

    @Test
    void a_name_of_another_site_or_of_another_row_is_refused() {
        assertThat(of(TITLES + "MS1-01,,900,1500,1,North,vinyl,A1\n").faults())
                .extracting(CellFault::wrong)
                .containsExactly("makes opening MS1-01, which stands at site M");
        assertThat(of(TITLES + "A,2,900,1500,1,North,vinyl,A1\nA-1,,900,1500,1,North,vinyl,A1\n")
                        .faults())
                .extracting(CellFault::wrong)
                .containsExactly("makes opening A-1, which row 2 makes too");
    }

    @Test
    void a_bare_letter_is_asked_for_and_read_as_it_was_said() {
        Draft draft = SiteWithWalls.draft(TITLES + "A,,900,1500,1,North,vinyl,B\n");
        assertThat(draft.hasBareLetters()).isTrue();
        assertThat(Outcomes.of(draft, folder, Set.of()).faults())
                .extracting(CellFault::wrong)
                .containsExactly("is a letter that schedules use in two ways");
        Map<LetterMeaning, Method> meant = Map.of(
                LetterMeaning.JAMB_FLASHING, Method.B,
                LetterMeaning.BARRIER_OVER_FLANGE, Method.A1,
                LetterMeaning.BARRIER_BEHIND_FLANGE, Method.B1);
        meant.forEach((letters, method) -> assertThat(
                        Outcomes.of(draft.with(draft.choices().withLetters(letters)), folder, Set.of())
                                .openings())
                .extracting(one -> one.becomes().method())
                .containsExactly(method));
    }

    @Test
    void numbers_without_a_unit_wait_for_a_person_and_a_frame_gets_its_clearance() {
        Draft draft = SiteWithWalls.draft("Mark,Width,Height,Floor,Elevation\nA,36,48 1/2,1,N\n");
        assertThat(Outcomes.of(draft, folder, Set.of()).faults())
                .extracting(CellFault::column, CellFault::wrong)
                .containsExactly(tuple("B", "has no unit"), tuple("C", "has no unit"));
        var inches = Outcomes.of(draft.with(draft.choices().withUnit(LengthUnit.INCH)), folder, Set.of());
        // 36 in and 1/2 in of clearance are 927.1 mm, 48 1/2 in and 1/2 in are 1244.6 mm
        assertThat(inches.openings())
                .extracting(one -> one.becomes().widthMm(), one -> one.becomes().heightMm())
                .containsExactly(tuple(927, 1245));
    }

    @Test
    void a_cell_put_right_counts_and_a_row_left_out_makes_nothing() {
        Draft draft = SiteWithWalls.draft(TITLES + "A,,900,tall,1,North,vinyl,A1\nTotal,600,,,,,,\n");
        int a = draft.rows().getFirst().number();
        Outcome right = Outcomes.of(
                draft.withEdit(new Draft.Cell(a, Field.ROUGH_HEIGHT), "1500").leavingOut(a + 1, true),
                folder,
                Set.of());
        assertThat(right.sound()).isTrue();
        assertThat(right.openings()).extracting(one -> one.becomes().heightMm()).containsExactly(1500);
    }

    @Test
    void what_new_openings_need_is_asked_for_once() {
        Draft draft = SiteWithWalls.draft(NINE);
        var standIns = draft.choices().standIns().withApproach(null).withDeliveredOn(null);
        assertThat(Outcomes.of(draft.with(draft.choices().withStandIns(standIns)), folder, Set.of())
                        .lacking())
                .hasSize(2);
    }
}
