package drylap.bench;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** The parts of a plan that are asked most, each by itself: decoding, open time, a move and back, the rain call. */
final class JmhBench {
    private JmhBench() {}

    /** @param which a regular expression that the benchmark's name is to match */
    static boolean run(String which) {
        try {
            return !new Runner(new OptionsBuilder().include(which).build())
                    .run()
                    .isEmpty();
        } catch (RunnerException failed) {
            throw new IllegalStateException(failed);
        }
    }
}
