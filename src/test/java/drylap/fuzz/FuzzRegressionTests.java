package drylap.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kept seed of every fuzz target, each read once and each cut off in a few places. */
class FuzzRegressionTests {
    private static final Duration LONG = Duration.ofMinutes(2);
    private static final int CUTS = 40;

    @ParameterizedTest
    @EnumSource(FuzzTarget.class)
    void every_target_has_seeds(FuzzTarget target) {
        assertThat(target.seedFiles()).isNotEmpty();
    }

    @TestFactory
    Stream<DynamicTest> no_seed_breaks_its_reader() {
        return Arrays.stream(FuzzTarget.values())
                .flatMap(target -> target.seedFiles().stream()
                        .map(seed -> DynamicTest.dynamicTest(
                                target.code() + " " + seed.getFileName(),
                                () -> assertTimeoutPreemptively(LONG, () -> read(target, seed)))));
    }

    private static void read(FuzzTarget target, Path seed) throws IOException {
        byte[] bytes = Files.readAllBytes(seed);
        target.read(bytes);
        for (int cut = 1; cut < CUTS; cut++) target.read(Arrays.copyOf(bytes, bytes.length * cut / CUTS));
    }
}
