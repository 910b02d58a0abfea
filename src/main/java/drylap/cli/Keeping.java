package drylap.cli;

import drylap.keeping.BackupTrouble;
import drylap.keeping.Backups.Kept;
import drylap.platform.DatabasePlace;
import drylap.platform.DatabaseTrouble;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.sql.SQLException;
import java.util.Locale;
import picocli.CommandLine;

/** What commands that work on the database itself have in common. */
final class Keeping {
    @FunctionalInterface
    interface Work {
        /** Answers what was done, in a sentence without its full stop. */
        String on(DatabasePlace place) throws BackupTrouble, IOException, SQLException;
    }

    private Keeping() {}

    /** On what the environment names; what is wrong with that is bad input. */
    static int run(CommandLine line, Work work) throws IOException, SQLException {
        try {
            line.getOut().println(work.on(DatabasePlace.of(System.getenv())) + ".");
            return ExitCodes.DONE;
        } catch (BackupTrouble trouble) {
            line.getErr().println(trouble.getMessage());
        } catch (DatabaseTrouble trouble) {
            return refused(line, trouble);
        } catch (NoSuchFileException | AccessDeniedException trouble) {
            line.getErr().println(trouble.getFile() + " is not there, or may not be read or written");
        }
        return ExitCodes.BAD_INPUT;
    }

    static int refused(CommandLine line, DatabaseTrouble trouble) {
        line.getErr().println(trouble.getMessage());
        line.getErr().println(trouble.remedy());
        return ExitCodes.BAD_INPUT;
    }

    static String words(Kept kept) {
        return String.format(
                Locale.ROOT,
                "%,d rows of %d tables and %,d files of %,d bytes",
                kept.rows(),
                kept.tables(),
                kept.files(),
                kept.bytes());
    }
}
