package drylap.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The clock of one process, which libfaketime sets: what a machine's clock does when somebody sets it, without touching this machine's. */
record WrongClock(Path file) {
    private static final Path LIBRARIES = Path.of("/usr/lib");
    private static final String LIBRARY = "faketime/libfaketime.so.1";
    /** How often the process looks at the file. */
    static final Duration SEEN_AFTER = Duration.ofSeconds(1);

    private static final Optional<Path> FOUND = find();

    /** Debian has it in a folder of the processor's name. */
    private static Optional<Path> find() {
        try (Stream<Path> folders = Files.list(LIBRARIES)) {
            return folders.map(folder -> folder.resolve(LIBRARY))
                    .filter(Files::isRegularFile)
                    .findFirst();
        } catch (IOException none) {
            return Optional.empty();
        }
    }

    static boolean possible() {
        return FOUND.isPresent();
    }

    /** What a process has to be started with; its clock is right at first. */
    Map<String, String> environment() {
        if (FOUND.isEmpty()) return Map.of();
        set(Duration.ZERO);
        return Map.of(
                "LD_PRELOAD",
                FOUND.get().toString(),
                "FAKETIME_TIMESTAMP_FILE",
                file.toString(),
                "FAKETIME_CACHE_DURATION",
                Long.toString(SEEN_AFTER.toSeconds()),
                "FAKETIME_DONT_FAKE_MONOTONIC",
                "1",
                // else a JVM's waits end at once, and it waits by turning round
                "FAKETIME_FORCE_MONOTONIC_FIX",
                "0",
                "NO_FAKE_STAT",
                "1");
    }

    void set(Duration ahead) {
        try {
            Files.writeString(file, "%+d".formatted(ahead.toSeconds()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
