package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** Runs commands over a generated job and its plan in a folder of its own. */
abstract class CommandLineOverAJob {
    @TempDir
    Path place;

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    int run(String... words) {
        return new Commands((_, _) -> {}, new PrintWriter(out, true), new PrintWriter(err, true)).run(words);
    }

    String in(String name) {
        return place.resolve(name).toString();
    }

    void plan(int openings, int moves) {
        assertThat(run("generate", "--openings", "" + openings, "--seed", "1", "--out", in("job")))
                .isZero();
        assertThat(run("plan", "--in", in("job"), "--out", in("plan"), "--moves", "" + moves))
                .isZero();
        out.getBuffer().setLength(0);
    }
}
