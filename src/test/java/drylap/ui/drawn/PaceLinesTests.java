package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.pace.Cell;
import drylap.pace.Doubt;
import drylap.pace.Lately;
import drylap.pace.PaceSheet;
import drylap.pace.PaceSheet.OfCell;
import drylap.pace.PaceSheet.OfMethod;
import drylap.pace.SizeClass;
import drylap.planning.LabourAnswer;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaceLinesTests {
    private static final Lately LATELY = new Lately(90.2, 103.7, 5.2, 17);

    private static LabourAnswer answer(LabourAnswer.Kind kind) {
        return new LabourAnswer(4, Method.B1, kind, new BigDecimal("1.150"), 17, "Ada", Instant.EPOCH);
    }

    private static PaceLines lines(Optional<LabourAnswer> inForce, Optional<LabourAnswer> newest) {
        return lines(Speech.ENGLISH, inForce, newest);
    }

    private static PaceLines lines(Speech say, Optional<LabourAnswer> inForce, Optional<LabourAnswer> newest) {
        var method = new OfMethod(Method.B1, new BigDecimal("1.15"), LATELY, true, inForce, newest);
        var cell = new OfCell(new Cell(new CrewId("W1"), Method.B1, SizeClass.MEDIUM), new Lately(90, 70, 9, 1));
        return PaceLines.of(
                say, new PaceSheet(List.of(method), List.of(cell), Map.of(Doubt.PAUSE, 2, Doubt.UNDONE, 1)));
    }

    @Test
    void minutes_are_said_with_their_range_and_how_many_openings_say_so() {
        var lines = lines(Optional.empty(), Optional.empty());

        assertThat(lines.methods()).singleElement().satisfies(line -> {
            assertThat(line.name()).isEqualTo("Method B1");
            assertThat(line.minutes()).isEqualTo("planned 90, lately 104 ± 6 (17 openings)");
            assertThat(line.standing()).isEmpty();
        });
        assertThat(lines.cells())
                .containsExactly(
                        new PaceLines.OneCell("W1", "B1", "1.5 to 3 m²", "planned 90, lately 70 ± 9 (1 opening)"));
        assertThat(lines.leftOut()).isEqualTo("Left out: 1 something was undone; 2 a long pause in it.");
    }

    @Test
    void who_accepted_or_declined_is_said() {
        var accepted = Optional.of(answer(LabourAnswer.Kind.ACCEPTED));
        assertThat(lines(accepted, accepted).methods().getFirst().standing())
                .isEqualTo("1.15 times the labour table as brought in, accepted by Ada, learnt from 17 openings");
        assertThat(lines(Optional.empty(), Optional.of(answer(LabourAnswer.Kind.DECLINED)))
                        .methods()
                        .getFirst()
                        .standing())
                .isEqualTo("left as planned by Ada");
    }

    @Test
    void whoever_reads_spanish_finds_no_english_in_them() {
        var spanish = new Speech(Reading.USUAL.in(Language.SPANISH));
        var accepted = Optional.of(answer(LabourAnswer.Kind.ACCEPTED));
        var said = lines(spanish, accepted, accepted);
        var declined = lines(spanish, Optional.empty(), Optional.of(answer(LabourAnswer.Kind.DECLINED)));

        var method = said.methods().getFirst();
        assertThat(method.minutes()).isEqualTo("planificado 90, últimamente 104 ± 6 (17 aberturas)");
        var words = new SpanishWords(List.of("Ada"));
        assertThat(List.of(
                        method.name(),
                        method.minutes(),
                        method.standing(),
                        declined.methods().getFirst().standing(),
                        said.cells().getFirst().size(),
                        said.cells().getFirst().minutes(),
                        said.leftOut()))
                .allSatisfy(one -> assertThat(words.strange(one)).isEmpty());
    }
}
