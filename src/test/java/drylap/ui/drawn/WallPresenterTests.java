package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.speech.Speech;
import drylap.ui.drawn.Wall.Glyph;
import drylap.ui.drawn.Wall.Part;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WallPresenterTests {
    private final FolderShown shown = QuayPlan.unplannedFolder();

    @Test
    void stacks_the_courses_from_the_ground_up() {
        Wall wall = WallPresenter.wall(Speech.ENGLISH, shown, QuayPlan.west());
        assertThat(wall.courses()).extracting(Wall.WallCourse::level).containsExactly(1, 2);
        assertThat(wall.courses().getFirst().openings())
                .extracting(Glyph::opening)
                .containsExactly("QW1-01", "QW1-02");
    }

    @Test
    void owes_the_laps_above_to_a_window_that_is_set() {
        Glyph glyph = glyph("QW1-01");
        assertThat(glyph.apron()).isEqualTo(Part.ON);
        assertThat(glyph.pan()).isEqualTo(Part.ON);
        assertThat(glyph.window()).isEqualTo(Part.ON);
        assertThat(glyph.jambs()).isEqualTo(Part.MISSING);
        assertThat(glyph.head()).isEqualTo(Part.MISSING);
        assertThat(glyph.progress()).isEqualTo("line 5 of 9");
    }

    /** A set window of method A without its jamb flashing has only a wet bead at the jambs: open. */
    @Test
    void shows_where_water_would_enter() {
        assertThat(glyph("QW1-01").water()).isTrue();
        assertThat(glyph("QW1-01").rating()).isEqualTo("R0");
    }

    @Test
    void shows_no_drop_at_an_opening_that_is_released_or_not_begun() {
        assertThat(glyph("QW1-02").water()).isFalse();
        assertThat(glyph("QW1-02").progress()).isEqualTo("released");
        assertThat(glyph("QW2-01").water()).isFalse();
        assertThat(glyph("QW2-01").head()).isEqualTo(Part.LATER);
    }

    @Test
    void holds_the_flap_up_once_the_barrier_is_cut() {
        assertThat(glyph("MS1-02").flap()).isEqualTo(Part.MISSING);
        assertThat(glyph("MS1-02").wrap()).isEqualTo(Part.ON);
        assertThat(glyph("MS1-01").flap()).isEqualTo(Part.LATER);
        assertThat(glyph("MS1-01").rating()).isEqualTo("R3");
    }

    @Test
    void draws_no_pan_at_a_sealed_sill_and_no_flap_where_the_barrier_comes_later() {
        assertThat(glyph("MS1-01").pan()).isEqualTo(Part.NONE);
        assertThat(glyph("QW1-01").flap()).isEqualTo(Part.NONE);
    }

    private Glyph glyph(String opening) {
        return Stream.of(QuayPlan.west(), new FacadeId(new SiteId("M"), "south"))
                .flatMap(facade -> WallPresenter.wall(Speech.ENGLISH, shown, facade).courses().stream())
                .flatMap(course -> course.openings().stream())
                .filter(glyph -> glyph.opening().equals(opening))
                .findFirst()
                .orElseThrow();
    }
}
