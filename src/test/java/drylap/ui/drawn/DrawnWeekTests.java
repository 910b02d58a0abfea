package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.kernel.Task;
import drylap.speech.Speech;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class DrawnWeekTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    private static FolderShown planned(String until) {
        return new QuayPlan()
                .visit("W1", MONDAY, "08:00", until, Task.INSTALL, "QW1-01")
                .shown();
    }

    @Test
    void what_is_unpacked_is_the_week() throws Exception {
        FolderShown shown = planned("09:00");
        DrawnWeek drawn = shown.week(Speech.ENGLISH, WeekChoice.ALL);

        assertThat(JsonMapper.builder().build().readValue(drawn.json(), Week.class))
                .isEqualTo(WeekPresenter.week(shown));
        try (var plain = drawn.plain();
                var packed = drawn.packed()) {
            assertThat(new String(plain.readAllBytes(), StandardCharsets.UTF_8)).isEqualTo(drawn.json());
            assertThat(packed.readAllBytes()).hasSize(drawn.packedLength());
        }
    }

    @Test
    void pages_that_show_the_same_hold_the_same() {
        FolderShown shown = planned("09:00");
        assertThat(shown.week(Speech.ENGLISH, WeekChoice.ALL)).isSameAs(shown.week(Speech.ENGLISH, WeekChoice.ALL));
        assertThat(shown.week(SPANISH, WeekChoice.ALL)).isNotEqualTo(shown.week(Speech.ENGLISH, WeekChoice.ALL));
    }

    /** So that a page fetches nothing after news that change nothing of its week. */
    @Test
    void weeks_are_equal_where_all_that_is_drawn_is() {
        DrawnWeek one = planned("09:00").week(Speech.ENGLISH, WeekChoice.ALL);
        assertThat(planned("09:00").week(Speech.ENGLISH, WeekChoice.ALL))
                .isEqualTo(one)
                .hasSameHashCodeAs(one);
        assertThat(planned("09:30").week(Speech.ENGLISH, WeekChoice.ALL)).isNotEqualTo(one);
    }

    @Test
    void of_two_folders_the_newer_is_shown_only_where_anything_differs() {
        FolderShown shown = planned("09:00");
        assertThat(shown.orNewer(planned("09:00"))).isSameAs(shown);
        FolderShown newer = planned("09:30");
        assertThat(shown.orNewer(newer)).isSameAs(newer);
    }
}
