package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.handoff.Custody;
import drylap.handoff.ReturnReason;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import drylap.progress.Exposed;
import drylap.progress.Exposed.Part;
import drylap.progress.OpeningState;
import drylap.security.Person;
import drylap.security.Role;
import drylap.sites.Opening;
import drylap.speech.Speech;
import drylap.ui.QuayFolder;
import drylap.ui.drawn.Aprons.CourseSheet;
import drylap.ui.drawn.Aprons.LineToMark;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ApronPresenterTests {
    private static final OpeningId ONE = new OpeningId("QW1-01");
    private static final OpeningId TWO = new OpeningId("QW1-02");
    private static final Custody RELEASED = new Custody.Released(1, QuayPlan.at(MONDAY, "15:00"), "Ann");

    private final JobFolder folder = new QuayFolder().folder();
    private final Person wrapper = person(Role.FOLLOW_ON, "P1");
    private final Person scheduler = person(Role.SCHEDULER, null);

    @Test
    void counts_what_the_window_crew_let_go_of_course_by_course() {
        var face = ApronPresenter.aprons(facts(Map.of(TWO, RELEASED)), wrapper)
                .faces()
                .getFirst();
        assertThat(face.title()).isEqualTo("Quay Nine, west");
        assertThat(face.toAccept()).isEqualTo(1);
        assertThat(face.courses()).extracting(CourseSheet::level).containsExactly(1, 2);
        assertThat(face.courses().getFirst().ready()).isEqualTo("apron ready at 1 of 2");
    }

    @Test
    void offers_what_was_released_to_the_trade_that_follows_and_to_nobody_else() {
        assertThat(ground(wrapper).acceptable().versions()).containsExactly(Map.entry(TWO, 7L));
        assertThat(ground(scheduler).acceptable().isEmpty()).isTrue();
        assertThat(ground(scheduler).toMark()).isEmpty();
    }

    @Test
    void offers_nobody_what_was_released_before_the_log_began() {
        var course = course(facts(Map.of()), wrapper);
        assertThat(course.ready()).isEqualTo("apron ready at 1 of 2");
        assertThat(course.acceptable().isEmpty()).isTrue();
    }

    @Test
    void lists_the_lines_of_ones_own_trade_with_how_many_the_laps_allow() {
        var lines = ground(wrapper).toMark();
        assertThat(lines)
                .isNotEmpty()
                .allSatisfy(line -> assertThat(
                                folder.openings().getFirst().workList().line(line.code()))
                        .get()
                        .extracting(drylap.assembly.WorkLine::trade)
                        .isEqualTo(drylap.kernel.Trade.WRAP));
        assertThat(lines.getFirst().open()).containsExactly(ONE, TWO);
        assertThat(lines).extracting(LineToMark::allowed).contains(1);
    }

    /** The order of the layers: domain notes, table of second layers, "drain between layers" (IRC R703.7.3). */
    @Test
    void never_says_to_tuck_where_water_drains_between_the_layers() {
        var drained = new QuayFolder()
                .with(
                        "openings.csv",
                        "QW1-02,1200,1500,wood,A,drainage,none",
                        "QW1-02,1200,1500,wood,A,drainage,drain-between")
                .folder();
        assertThat(course(facts(drained, Map.of(), List.of()), wrapper).laps())
                .containsExactly(
                        "tuck the first barrier under the apron; drains to: outer face of the first barrier",
                        "second barrier over the apron, drain between: tuck nothing under it; "
                                + "drains to: between the first and the second barrier");
    }

    @Test
    void says_on_which_day_the_last_visit_before_the_wrap_makes_an_opening_ready() {
        var visits = List.of(
                visit(ONE, Task.INSTALL, MONDAY),
                visit(ONE, Task.TEST, TUESDAY),
                visit(ONE, Task.WRAP, TUESDAY.plusDays(3)));
        assertThat(course(facts(folder, Map.of(), visits), wrapper).coming()).containsExactly("Tue 14 Apr: QW1-01");
        assertThat(course(facts(folder, Map.of(), List.of()), wrapper).coming())
                .containsExactly("in no plan yet: QW1-01");
    }

    @Test
    void names_what_was_returned_and_why() {
        var returned = new Custody.Returned(2, QuayPlan.at(MONDAY, "16:00"), "Bo", ReturnReason.APRON_SHORT, "20 mm");
        assertThat(course(facts(Map.of(TWO, returned)), wrapper).returns())
                .containsExactly("QW1-02: %s (20 mm), returned by Bo, Mon 13 Apr 16:00"
                        .formatted(ReturnReason.APRON_SHORT.words()));
    }

    @Test
    void counts_the_sun_of_the_layer_that_has_least_left() {
        var early = new Exposed(Part.APRON, null, 100, 120, 20, "test");
        var late = new Exposed(Part.APRON, null, 115, 120, 5, "test");
        var states = List.of(Standing.of(opening(0), List.of(), early), Standing.of(opening(1), List.of(), late));
        assertThat(SunLeft.words(Speech.ENGLISH, states))
                .containsExactly("apron: 5 of 120 days of sun left (QW1-02 first of 2)");
        assertThat(SunLeft.isShort(states)).isTrue();
        assertThat(SunLeft.isShort(states.subList(0, 1))).isFalse();
    }

    @Test
    void draws_each_opening_with_the_hand_that_has_it() {
        var wall = ApronPresenter.aprons(facts(Map.of(TWO, RELEASED)), wrapper)
                .faces()
                .getFirst()
                .wall();
        assertThat(wall.courses().getFirst().openings())
                .extracting(Wall.Glyph::hand)
                .containsExactly(Hand.NOT_RELEASED, Hand.RELEASED);
        assertThat(wall.courses().getFirst().openings().getLast().edgeHeld()).isFalse();
    }

    private CourseSheet ground(Person who) {
        return course(facts(Map.of(TWO, RELEASED)), who);
    }

    private static CourseSheet course(ApronFacts facts, Person who) {
        return ApronPresenter.aprons(facts, who).faces().getFirst().courses().getFirst();
    }

    private ApronFacts facts(Map<OpeningId, Custody> custodies) {
        return facts(folder, custodies, List.of());
    }

    private static ApronFacts facts(JobFolder folder, Map<OpeningId, Custody> custodies, List<Visit> visits) {
        List<OpeningState> states =
                folder.openings().stream().map(Standing::asImported).toList();
        return new ApronFacts(
                new FolderId(1), folder.sites(), folder.facades(), folder.crews(), visits, states, custodies);
    }

    private Opening opening(int row) {
        return folder.openings().get(row);
    }

    private static Visit visit(OpeningId opening, Task task, LocalDate date) {
        return new Visit(
                new CrewId("W1"),
                date,
                1,
                QuayPlan.west(),
                1,
                opening,
                task,
                QuayPlan.at(date, "08:00"),
                QuayPlan.at(date, "09:00"));
    }

    private static Person person(Role role, @Nullable String crew) {
        return new Person(
                new PersonId(1), "x", "X", role, Reach.EVERYWHERE, crew == null ? null : new CrewId(crew), false);
    }
}
