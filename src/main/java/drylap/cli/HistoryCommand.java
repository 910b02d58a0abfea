package drylap.cli;

import drylap.platform.DatabasePlace;
import drylap.platform.DatabaseTrouble;
import drylap.security.HistorySeals.Head;
import drylap.security.SealCheck;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

@Command(
        name = "history",
        description = {
            "Checks that nobody has changed the history of who changed what, whatever rights they have; the application may go on meanwhile.",
            "Note the head that it prints where nobody who can change the database can change it, and give it next time.",
            "DRYLAP_DATA and DRYLAP_DB_URL name the database, as they do for the application."
        })
final class HistoryCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(
            names = "--noted",
            paramLabel = "NUMBER:SHA256",
            converter = HeadOf.class,
            description = "A head that was printed before: the history must still hold it.")
    @Nullable
    Head noted;

    @Override
    public Integer call() throws Exception {
        var line = Objects.requireNonNull(spec).commandLine();
        try {
            return said(SealCheck.at(DatabasePlace.of(System.getenv()), Optional.ofNullable(noted)), line);
        } catch (DatabaseTrouble trouble) {
            return Keeping.refused(line, trouble);
        }
    }

    private static int said(SealCheck.Result result, CommandLine line) {
        PrintWriter out = line.getOut();
        result.faults().forEach(line.getErr()::println);
        out.printf(
                "%,d lines sealed, %,d not yet, %d faults.%n",
                result.sealed(), result.unsealed(), result.faults().size());
        if (result.withoutName() > 0)
            out.printf(
                    "Of %,d lines someone's name was taken out since, as the history tells.%n", result.withoutName());
        result.head().ifPresent(head -> out.printf("Head %s%n", head));
        return result.faults().isEmpty() ? ExitCodes.DONE : ExitCodes.BREACHES;
    }

    private static final class HeadOf implements ITypeConverter<Head> {
        private static final Pattern FORM = Pattern.compile("([0-9]{1,18}):([0-9a-f]{64})");

        @Override
        public Head convert(String words) {
            var parts = FORM.matcher(words.strip());
            if (!parts.matches())
                throw new TypeConversionException(
                        "'%s' is no head; accepted is what this command printed after 'Head', as 12:9f86d0…"
                                .formatted(words));
            return new Head(Long.parseLong(parts.group(1)), parts.group(2));
        }
    }
}
