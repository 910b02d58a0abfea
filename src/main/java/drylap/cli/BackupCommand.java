package drylap.cli;

import drylap.keeping.Backups;
import drylap.keeping.Backups.Kept;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "backup",
        description = {
            "Writes the whole database and the stored photos to one file, as they are at one moment; the application may go on meanwhile.",
            "DRYLAP_DATA, DRYLAP_FILES and DRYLAP_DB_URL name what is backed up, as they do for the application."
        })
final class BackupCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "A new file; it holds names and password digests, so keep it as safe as the data.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws Exception {
        return Keeping.run(
                Objects.requireNonNull(spec).commandLine(),
                place -> said(Backups.write(place, Objects.requireNonNull(file), Clock.systemUTC())));
    }

    private static String said(Kept kept) {
        return "Backed up " + Keeping.words(kept);
    }
}
