package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Part;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LeftOutTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));
    private static final Part.When DAY = new Part.When(LocalDate.of(2026, 9, 14));
    private static final Part.When HOUR = new Part.When(LocalDateTime.of(2026, 4, 14, 9, 30));

    @ParameterizedTest
    @EnumSource(LeftOut.class)
    void what_a_plan_keeps_is_read_back_as_the_same_words_and_said_in_other_ones(LeftOut why) {
        for (Object part : new Object[] {"window", DAY, HOUR, 70, "QW2-01"}) {
            String kept = why.with(part, part, part);
            assertThat(LeftOut.read(kept).words()).isEqualTo(kept);
            assertThat(SPANISH.it(LeftOut.read(kept))).isNotEqualTo(kept);
        }
    }

    @Test
    void days_and_hours_are_told_in_the_readers_words() {
        assertThat(SPANISH.it(LeftOut.read(
                        "delivered on Mon 14 Sep, and no crew has open time after that before " + "Tue 14 Apr 09:30")))
                .isEqualTo(
                        "se entrega lun 14 sept, y después ninguna cuadrilla tiene tiempo abierto antes de mar 14 abr 09:30");
        assertThat(SPANISH.it(LeftOut.read("there is no crew of the trade siding")))
                .isEqualTo("no hay ninguna cuadrilla del oficio: revestimiento");
    }

    @Test
    void words_of_a_plan_made_elsewhere_stay_as_they_are() {
        assertThat(SPANISH.it(LeftOut.read("no siding crew is free"))).isEqualTo("no siding crew is free");
    }
}
