package drylap.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the fuzzer calls with bytes that it made up: the target named by the property {@value #TARGET}. */
public final class FuzzedReader {
    static final String TARGET = "drylap.fuzz.target";

    private static final FuzzTarget READER = FuzzTarget.of(System.getProperty(TARGET, ""));

    private FuzzedReader() {}

    /** Called once before: every class that the seeds need is loaded and made ready, which may take longer than one input may. */
    public static void fuzzerInitialize() throws IOException {
        for (Path seed : READER.seedFiles()) READER.read(Files.readAllBytes(seed));
    }

    /** By this name and shape the fuzzer finds it. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        READER.read(bytes);
    }
}
