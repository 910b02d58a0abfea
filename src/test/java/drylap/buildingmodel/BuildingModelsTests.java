package drylap.buildingmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.buildingmodel.ModelText.Unit;
import drylap.buildingmodel.ModelWindow.Facing;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is expected is worked out by hand from the plan of the house in {@link ModelText}; attribute places are those of IFC2X3 and IFC4. */
class BuildingModelsTests {
    /** The direction (-1/2, √3/2): true north lies 30 degrees counter-clockwise of +Y, so +Y bears 30 degrees. */
    private static final String NORTH_30 = "(-0.5,0.8660254037844386)";

    private static List<ModelWindow> windows(ModelText model) {
        return read(model).windows();
    }

    private static ModelReading.Read read(ModelText model) {
        return switch (BuildingModels.read(model.bytes())) {
            case ModelReading.Read read -> read;
            case ModelReading.Refused refused -> throw new AssertionError(refused.toString());
        };
    }

    private static ModelReading.Refused refused(String text) {
        return (ModelReading.Refused) BuildingModels.read(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static ModelText house() {
        return new ModelText("IFC4", Unit.MILLIMETRE, NORTH_30).storey("Level 1", 0);
    }

    private static String notTold(ModelWindow window) {
        return ((Facing.NotTold) window.facing()).why();
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X3, MILLIMETRE",
        "IFC2X3, METRE",
        "IFC2X3, FOOT",
        "IFC2X3, INCH",
        "IFC4, MILLIMETRE",
        "IFC4, METRE",
        "IFC4, FOOT",
        "IFC4, INCH"
    })
    void sizes_sills_storeys_and_places_are_in_millimetres_whatever_the_file_is_in(String schema, Unit unit) {
        var model = new ModelText(schema, unit, NORTH_30)
                .storey("Level 1", 0)
                .storey("Level 2", 2_743.2)
                .window("W1", "Level 1 south", 2_000, 914.4, 1_219.2, 1_524)
                .window("W2", "Level 2 north", 3_000, 900, 914.4, 1_219.2);
        List<ModelWindow> windows = windows(model);
        assertThat(windows).extracting(ModelWindow::mark).containsExactly("W1", "W2");
        assertThat(windows).extracting(ModelWindow::markedBy).containsOnly("Tag");
        assertThat(windows.get(0).widthMm()).isCloseTo(1_219.2, within(1e-3));
        assertThat(windows.get(0).heightMm()).isCloseTo(1_524, within(1e-3));
        assertThat(windows.get(0).sillMm()).isCloseTo(914.4, within(1e-3));
        assertThat(windows.get(0).alongMm()).isCloseTo(2_000, within(1e-3));
        assertThat(windows.get(0).storey().name()).isEqualTo("Level 1");
        assertThat(windows.get(0).storey().building()).isEqualTo("House");
        // seen from the north the wall begins at its left, where the east of the house is
        assertThat(windows.get(1).alongMm()).isCloseTo(3_000, within(1e-3));
        assertThat(windows.get(1).sillMm()).isCloseTo(900, within(1e-3));
        assertThat(windows.get(1).storey().elevationMm()).isCloseTo(2_743.2, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"south, 210", "east, 120", "north, 30", "west, 300"})
    void walls_face_away_from_the_house_by_true_north(String wall, double azimuth) {
        // +Y bears 30 degrees; the walls face -Y, +X, +Y and -X
        var window = windows(house().window("W", "Level 1 " + wall, 1_000, 900, 900, 1_200))
                .getFirst();
        assertThat(window.facing()).isEqualTo(new Facing.Told(((Facing.Told) window.facing()).wall(), azimuth, 1, 1));
        assertThat(window.facing().wall()).startsWith("Level 1 " + wall + " (#");
        assertThat(window.leftOpen()).isEmpty();
    }

    @Test
    void true_north_is_said_or_the_standards_own_is_told() {
        assertThat(read(house().window("W", "Level 1 east", 0, 0, 900, 900)).understood())
                .anyMatch(one -> one.startsWith("True north lies 30.0\u00b0 counter-clockwise"));
        var without = new ModelText("IFC2X3", Unit.METRE, "")
                .storey("Level 1", 0)
                .window("W", "Level 1 east", 0, 0, 900, 900);
        assertThat(read(without).understood()).anyMatch(one -> one.startsWith("The model says no true north"));
        assertThat(((Facing.Told) windows(without).getFirst().facing()).azimuthDeg())
                .isEqualTo(90);
    }

    @Test
    void parallel_walls_that_lie_apart_are_planes_of_their_own_from_the_outermost() {
        // a storey that is set back: its south wall lies 2,000 mm further in
        var model = house().floor("Level 2", 3_000)
                .wall("Level 2", "back", 0, 2_000, "(1.,0.,0.)")
                .wall("Level 2", "far", 10_000, 8_000, "(-1.,0.,0.)")
                .window("LOW", "Level 1 south", 1_500, 900, 900, 1_200)
                .window("HIGH", "back", 2_500, 900, 900, 1_200);
        assertThat(windows(model))
                .extracting(
                        one -> ((Facing.Told) one.facing()).plane() + " of " + ((Facing.Told) one.facing()).planes())
                .containsExactly("1 of 2", "2 of 2");
        assertThat(windows(model))
                .extracting(ModelWindow::alongMm)
                .satisfiesExactly(
                        low -> assertThat(low).isCloseTo(1_500, within(1e-6)),
                        high -> assertThat(high).isCloseTo(2_500, within(1e-6)));
    }

    @Test
    void at_an_inner_corner_a_person_is_asked() {
        // walls of the same storey stand 2,000 mm in front of this one and 8,000 mm behind
        var model =
                house().wall("Level 1", "inner", 4_000, 2_000, "(1.,0.,0.)").window("W", "inner", 500, 900, 900, 1_200);
        var window = windows(model).getFirst();
        assertThat(notTold(window)).isEqualTo("walls of its storey stand on both sides of its wall");
        assertThat(window.alongMm()).isNull();
        assertThat(window.leftOpen())
                .containsExactly("which way it faces: walls of its storey stand on both sides of its wall");
    }

    @Test
    void a_wall_by_itself_does_not_tell_its_outside() {
        var model = new ModelText("IFC4", Unit.MILLIMETRE, "")
                .floor("1", 0)
                .wall("1", "lone", 0, 0, "(1.,0.,0.)")
                .window("W", "lone", 500, 900, 900, 1_200);
        assertThat(notTold(windows(model).getFirst()))
                .isEqualTo("no other wall of its storey tells the inside from the outside");
    }

    @Test
    void an_inner_wall_is_asked_for_and_does_not_count_for_others() {
        var model = house().wall("Level 1", "porch", 4_000, -3_000, "(1.,0.,0.)")
                .external("porch", false)
                .external("Level 1 south", true)
                .window("IN", "porch", 500, 900, 900, 1_200)
                .window("OUT", "Level 1 south", 500, 900, 900, 1_200);
        List<ModelWindow> windows = windows(model);
        assertThat(notTold(windows.get(0))).isEqualTo("the model says that its wall is an inner one");
        assertThat(((Facing.Told) windows.get(1).facing()).azimuthDeg()).isEqualTo(210);
    }

    @Test
    void what_a_window_lacks_is_left_open() {
        var model = house();
        model.window("$", "'Sash'", "Level 1 south", 100, 900, "$", "1200.");
        model.window("$", "$", "$", "900.", "$");
        List<ModelWindow> windows = windows(model);
        assertThat(windows.get(0).mark()).isEqualTo("Sash");
        assertThat(windows.get(0).markedBy()).isEqualTo("Name");
        assertThat(windows.get(0).widthMm()).isNull();
        assertThat(windows.get(0).leftOpen()).containsExactly("its overall width");
        assertThat(windows.get(1).mark()).isEmpty();
        assertThat(windows.get(1).sillMm()).isNull();
        assertThat(windows.get(1).leftOpen())
                .containsExactly(
                        "its overall height",
                        "its sill: the window has no place in the model",
                        "which way it faces: it fills no opening of a wall");
    }

    @Test
    void a_placement_that_goes_in_a_circle_places_nothing() {
        var model = house();
        model.window("'W'", "$", "#90001", "900.", "900.");
        String text = model.toString()
                .replace(
                        "ENDSEC;\nEND-",
                        "#90001=IFCLOCALPLACEMENT(#90002,#90003);\n#90002=IFCLOCALPLACEMENT(#90001,#90003);\n"
                                + "#90003=IFCAXIS2PLACEMENT3D(#90004,$,$);\n#90004=IFCCARTESIANPOINT((0.,0.,0.));\nENDSEC;\nEND-");
        var read = (ModelReading.Read) BuildingModels.read(text.getBytes(StandardCharsets.UTF_8));
        assertThat(read.windows().getFirst().leftOpen()).contains("its sill: the window has no place in the model");
    }

    @Test
    void the_material_of_a_style_is_the_frames() {
        var model = house();
        model.window("W", "Level 1 south", 100, 900, 900, 1_200);
        String window = model.add("IFCWINDOW('g',$,'N',$,$,$,$,'T',900.,900.)");
        String style = model.add("IFCWINDOWSTYLE('t',$,'Casement 2',$,$,$,$,$,.ALUMINIUM.,.SINGLE_PANEL.,.F.,.F.)");
        model.add("IFCRELDEFINESBYTYPE('x',$,$,$,(%s),%s)".formatted(window, style));
        assertThat(windows(model)).extracting(ModelWindow::material).containsExactly("", "aluminum");
        assertThat(windows(model).get(1).type()).isEqualTo("Casement 2");
    }

    @Test
    void files_that_do_not_say_enough_are_refused_with_the_place() {
        String house =
                house().window("W", "Level 1 south", 100, 900, 900, 1_200).toString();
        assertThat(refused(house.replace("IFCWINDOW(", "IFCDOOR(")).wrong()).isEqualTo("has no windows");
        assertThat(refused(house.replace("'IFC4'", "'AP214'")).wrong()).contains("AP214");
        assertThat(refused(house.replace(".LENGTHUNIT.", ".AREAUNIT.")).wrong()).isEqualTo("assigns no unit of length");
        assertThat(refused(house.replace(".MILLI.,.METRE.", ".MILLI.,.GRAM.")).where())
                .isEqualTo("entity #2");
        assertThat(refused(house.replace("#3=", "#1=")).wrong()).isEqualTo("is there twice");
        assertThat(refused(house.substring(0, house.length() / 2)).wrong()).startsWith("ends within");
        assertThat(refused(house.replace("-0.5,0.8660254037844386", "0.,0.")).wrong())
                .isEqualTo("has a true north that is no direction");
    }
}
