package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.buildingmodel.ModelText;
import drylap.buildingmodel.ModelText.Unit;
import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Building models on their way into a site whose walls face 352, 82, 172 and 262 degrees; what is expected is worked out by hand. */
class ModelScheduleTests {
    /** True north lies 8 degrees clockwise of the model's +Y, so that +Y bears 352: (sin 8°, cos 8°). */
    private static final String NORTH = "(0.13917310096,0.99026806874)";

    private static ModelText house(String... storeys) {
        var model = new ModelText("IFC4", Unit.FOOT, NORTH);
        for (int i = 0; i < storeys.length; i++) model.storey(storeys[i], 3_000 * i);
        return model;
    }

    private static Outcome outcome(Draft draft) {
        return Outcomes.of(draft, SiteWithWalls.folder(), Set.of());
    }

    private static Draft draft(ModelText model) {
        return SiteWithWalls.draft("schedule.csv", model.bytes());
    }

    @Test
    void the_windows_of_a_model_become_openings_whatever_the_file_is_called() {
        var draft = draft(house("Level 1", "Level 2")
                .window("W-2", "Level 2 east", 1_500, 600, 900, 1_200)
                .window("W-1", "Level 1 south", 2_000, 900, 1_200, 1_500));
        Outcome outcome = outcome(draft);
        assertThat(outcome.faults()).isEmpty();
        assertThat(outcome.sound()).isTrue();
        List<OpeningOutcome> openings = outcome.openings(Kind.NEW);
        Opening second = openings.get(1).becomes();
        assertThat(second.id()).isEqualTo(new OpeningId("W-1"));
        assertThat(second.facade().facade()).isEqualTo("south");
        assertThat(second.level()).isEqualTo(1);
        // the frame and half an inch: 1212.7 and 1512.7 mm, halves up
        assertThat(second.widthMm()).isEqualTo(1_213);
        assertThat(second.heightMm()).isEqualTo(1_513);
        assertThat(openings.get(1).note().sillHeightMm()).isEqualTo(900);
        assertThat(openings.get(1).note().xMm()).isEqualTo(2_000);
        assertThat(openings.get(1).note().remarks()).startsWith("in the model g");
        assertThat(openings.getFirst().becomes().facade().facade()).isEqualTo("east");
        assertThat(openings.getFirst().becomes().level()).isEqualTo(2);
    }

    @Test
    void a_model_again_finds_its_openings_by_their_marks() {
        var folder = Takings.over(
                SiteWithWalls.folder(),
                outcome(draft(house("Level 1").window("W-1", "Level 1 south", 2_000, 900, 1_200, 1_500))));
        Outcome again = Outcomes.of(
                draft(house("Level 1").window("W-1", "Level 1 south", 2_000, 900, 1_200, 1_600)), folder, Set.of());
        assertThat(again.openings(Kind.CHANGED))
                .singleElement()
                .satisfies(one -> assertThat(one.differences())
                        .extracting(OpeningOutcome.Difference::what)
                        .containsExactly("height"));
    }

    @Test
    void a_row_has_the_number_of_its_window_and_says_what_the_model_leaves_open() {
        var model = house("Level 1");
        String window = model.window("'W-9'", "$", "$", "3.", "$");
        Outcome outcome = outcome(draft(model));
        int number = Integer.parseInt(window.substring(1));
        assertThat(outcome.faults()).allSatisfy(fault -> assertThat(fault.row()).isEqualTo(number));
        assertThat(outcome.faults())
                .extracting(fault -> fault.field().words() + " " + fault.wrong())
                .containsExactly("Elevation is no facade of the site", "Level is blank", "Frame height is blank");
        assertThat(outcome.faults().getFirst().value()).isEqualTo("not told: it fills no opening of a wall");
    }

    @Test
    void walls_whose_outside_is_not_told_are_asked_for_by_name() {
        var model = house("Level 1")
                .wall("Level 1", "inner", 4_000, 2_000, "(1.,0.,0.)")
                .window("W-1", "inner", 500, 900, 900, 1_200);
        Draft draft = draft(model);
        String elevation = draft.elevations().iterator().next();
        assertThat(elevation).startsWith("inner (#");
        assertThat(outcome(draft).sound()).isFalse();
        Draft told = draft.with(draft.choices().withWalls(Map.of(elevation, "west")));
        assertThat(outcome(told).openings(Kind.NEW))
                .singleElement()
                .satisfies(one -> assertThat(one.becomes().facade().facade()).isEqualTo("west"));
    }

    @Test
    void storeys_without_a_number_are_all_asked_for() {
        Draft draft = draft(house("Ground floor", "Level 1")
                .window("W-1", "Ground floor south", 500, 900, 900, 1_200)
                .window("W-2", "Level 1 south", 500, 900, 900, 1_200));
        assertThat(draft.storeys()).containsOnlyKeys("Ground floor", "Level 1");
        assertThat(outcome(draft).faults()).extracting(CellFault::field).containsExactly(Field.LEVEL);
        Draft told = draft.with(draft.choices().withLevels(Map.of("Ground floor", 1, "Level 1", 2)));
        assertThat(outcome(told).openings(Kind.NEW))
                .extracting(one -> one.becomes().level())
                .containsExactly(1, 2);
    }

    @Test
    void where_two_facades_look_the_same_way_none_is_taken_unasked() {
        var walls = new Walls(
                List.of(
                        new drylap.sites.Facade(new drylap.kernel.FacadeId(SiteWithWalls.QUAY, "front"), 172, null),
                        new drylap.sites.Facade(new drylap.kernel.FacadeId(SiteWithWalls.QUAY, "wing"), 174, null),
                        new drylap.sites.Facade(new drylap.kernel.FacadeId(SiteWithWalls.QUAY, "street"), 358, null)),
                SiteWithWalls.QUAY);
        assertThat(walls.named("faces 172.0\u00b0, plane 1 of 2 from outside")).isEmpty();
        assertThat(walls.named("faces 3.0\u00b0")).map(one -> one.id().facade()).contains("street");
        assertThat(walls.named("faces 3.1\u00b0")).isEmpty();
    }

    @Test
    void a_model_that_cannot_be_read_is_refused_with_its_place() {
        String cut = house("Level 1").toString().substring(0, 500);
        var refused = (FileReading.Refused) ScheduleFiles.read("house.ifc", cut.getBytes(StandardCharsets.UTF_8));
        assertThat(refused.text()).startsWith("house.ifc, line ").endsWith("a whole file is accepted");
    }
}
