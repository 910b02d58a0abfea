package drylap.cli;

import drylap.planning.JobFolder;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The job folder that a command is pointed at. */
final class JobOption {
    @Option(names = "--in", required = true, paramLabel = "DIR", description = "The job folder, or a zip of it.")
    @Nullable
    Path in;

    /** Nothing where it is refused; why is printed. */
    Optional<JobFolder> read(PrintWriter err) {
        return new Folders(err).job(Objects.requireNonNull(in));
    }
}
