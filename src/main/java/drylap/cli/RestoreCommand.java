package drylap.cli;

import drylap.keeping.Backups;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "restore",
        description = {
            "Takes a backup back into an empty database and an empty folder of photos: all of it, or nothing.",
            "DRYLAP_DATA, DRYLAP_FILES and DRYLAP_DB_URL name where it goes; start the application with the same ones afterwards."
        })
final class RestoreCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "What ./drylap backup has written, by this version or an earlier one.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws Exception {
        return Keeping.run(
                Objects.requireNonNull(spec).commandLine(),
                place -> "Restored "
                        + Keeping.words(Backups.restore(Objects.requireNonNull(file), place))
                        + ", each compared with what was backed up");
    }
}
