package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTests {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();
    final List<String> started = new ArrayList<>();
    final Commands commands = new Commands(
            (node, settings) -> started.add((node + " " + String.join(" ", settings)).strip()),
            new PrintWriter(out, true),
            new PrintWriter(err, true));

    @Test
    void no_command_starts_the_application() {
        assertThat(commands.run()).isZero();
        assertThat(started).containsExactly("WEB");
        assertThat(commands.applicationStarted()).isTrue();
    }

    @Test
    void serve_starts_the_application_on_the_port_asked_for() {
        assertThat(commands.run("serve", "--port", "9090")).isZero();
        assertThat(started).containsExactly("WEB --server.port=9090");
    }

    @Test
    void worker_starts_a_node_without_a_page() {
        assertThat(commands.run("worker", "--port", "9091")).isZero();
        assertThat(started).containsExactly("WORKER --server.port=9091");
        assertThat(commands.applicationStarted()).isTrue();
    }

    @Test
    void a_port_that_cannot_be_is_refused_before_anything_starts() {
        assertThat(commands.run("serve", "--port", "70000")).isEqualTo(2);
        assertThat(err.toString()).contains("70000", "1 to 65535");
        assertThat(commands.applicationStarted()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "serve --help"})
    void help_says_that_dry_is_not_safe_and_starts_nothing(String words) {
        assertThat(commands.run(words.split(" "))).isZero();
        assertThat(out.toString()).contains("never a statement that work at height is safe");
        assertThat(commands.applicationStarted()).isFalse();
    }

    @Test
    void version_is_one_line_and_starts_nothing() {
        assertThat(commands.run("--version")).isZero();
        assertThat(out.toString()).startsWith("Drylap ").hasLineCount(1);
        assertThat(commands.applicationStarted()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--colour", "sevre", "serve extra", "serve --port x"})
    void words_that_mean_nothing_end_with_2_and_point_to_help(String words) {
        assertThat(commands.run(words.split(" "))).isEqualTo(2);
        assertThat(err.toString()).contains("--help");
        assertThat(commands.applicationStarted()).isFalse();
    }
}
