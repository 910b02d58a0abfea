package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TraceCommandTests {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    private int run(String words) {
        var commands = new Commands(
                (_, _) -> {
                    throw new AssertionError("a headless command started the application");
                },
                new PrintWriter(out, true),
                new PrintWriter(err, true));
        return commands.run(words.split(" "));
    }

    private JsonNode json(String words) {
        assertThat(run(words + " --json")).isZero();
        return JsonMapper.shared().readTree(out.toString());
    }

    @Test
    void the_text_tells_steps_ratings_water_and_laps() {
        assertThat(run("trace --method B1 --approach drainage --second-layer tuck --after HF --frame vinyl"))
                .isZero();
        assertThat(out.toString())
                .contains("jamb flashing behind the flange, barrier on the wall before the window")
                .contains("R1 may stay only under a secured cover")
                .contains("next: W1H.close")
                .contains("apron on, lower edge free")
                .contains("BEHIND the first barrier above the head")
                .contains("Begin W1H.open only when everything up to W1H.close fits one dry spell.")
                .contains("Reverse laps:", "  none")
                .contains("vinyl frame")
                .contains("never a statement that work at height is safe");
    }

    @Test
    void json_holds_edges_steps_ratings_and_paths() {
        var trace = json("trace --method A --approach barrier");
        assertThat(trace.get("edges").valueStream().map(JsonNode::toString))
                .contains("{\"over\":\"APR\",\"under\":\"W1S\",\"kind\":\"V\",\"order\":\"tuck\"}");
        assertThat(trace.get("steps").valueStream().map(JsonNode::asString))
                .containsSubsequence("APR", "SET", "JF", "HF", "W1S")
                .doesNotContain("PAN", "TEST");
        assertThat(trace.get("ratings")
                        .valueStream()
                        .filter(rated -> rated.get("step").asString().equals("HF"))
                        .map(rated -> rated.get("rating").asString()))
                .containsExactly("R2");
        assertThat(trace.get("paths").valueStream().map(path -> path.get("failsAt")))
                .isNotEmpty()
                .allMatch(JsonNode::isNull);
        assertThat(trace.get("reverseLaps").isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {"APR,W1S", "W1S,APR"})
    void a_reversed_junction_may_be_named_in_either_order(String pair) {
        var trace = json("trace --method A --approach drainage --reverse " + pair);
        assertThat(trace.get("reverseLaps")).hasSize(1);
        assertThat(trace.get("reverseLaps").get(0).get("over").asString()).isEqualTo("W1S");
        assertThat(trace.get("reverseLaps").get(0).get("required").get("over").asString())
                .isEqualTo("APR");
        assertThat(trace.get("state").get("rating").asString()).isEqualTo("R0");
        assertThat(trace.get("paths")
                        .valueStream()
                        .map(path -> path.get("failsAt").asString("")))
                .contains("W1S");
    }

    @Test
    void a_lap_is_reversed_only_once_both_of_its_layers_are_on() {
        var trace = json("trace --method A --approach drainage --after HF --reverse APR,W1S");
        assertThat(trace.get("reverseLaps").isEmpty()).isTrue();
        assertThat(trace.get("state").get("rating").asString()).isEqualTo("R2");
    }

    @Test
    void the_drawing_is_a_file_of_its_own() {
        assertThat(run("trace --method B --approach drainage --svg")).isZero();
        assertThat(out.toString())
                .startsWith("<svg ")
                .contains("color-scheme:light dark")
                .endsWith("</svg>\n");
    }

    @Test
    void a_water_test_stands_among_the_steps_when_asked_for() {
        assertThat(json("trace --method B --approach drainage --water-test")
                        .get("steps")
                        .valueStream()
                        .map(JsonNode::asString))
                .containsSubsequence("IAS", "TEST", "W1S");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "trace --method C --approach drainage|'C' is no method; accepted: A, A1, B, B1",
                "trace --method A --approach wet|'wet' is no approach; accepted: drainage, barrier",
                "trace --method A|--approach",
                "trace --method A --approach barrier --second-layer two|accepted: none, tuck, drain-between",
                "trace --method A --approach barrier --after PAN|no such step; accepted: RO, APR, SET",
                "trace --method A --approach barrier --after GLUE|'GLUE' is no step; accepted: ",
                "trace --method A --approach barrier --reverse APR|two layers as OVER,UNDER",
                "trace --method A --approach barrier --reverse APR,XYZ|'XYZ' is not a layer; accepted: RO, PAN, APR",
                "trace --method A --approach barrier --reverse HF,W1S|do not meet in A barrier none; accepted: FLS,APR",
                "trace --method A --approach barrier --frame steel|accepted: wood, aluminum, vinyl, fiberglass",
                "trace --method A --approach barrier --json --svg|mutually exclusive"
            })
    void bad_words_are_refused_with_what_is_accepted(String words, String message) {
        assertThat(run(words)).isEqualTo(2);
        assertThat(err.toString()).contains(message).contains("drylap trace --help");
        assertThat(out.toString()).isEmpty();
    }
}
