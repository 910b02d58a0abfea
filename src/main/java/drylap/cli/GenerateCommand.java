package drylap.cli;

import drylap.intake.FolderWriter;
import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "generate",
        description = {
            "Writes an invented job folder for trials and benchmarks; the same numbers give the same bytes.",
            "Its crews, deliveries, cure times and levels leave room for every task within three weeks, through the "
                    + "rain that is forecast for the first ten days: a plan without unplanned work is to be expected."
        })
final class GenerateCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--openings", required = true, paramLabel = "N", description = "How many openings: 8 to 20000.")
    int openings;

    @Option(names = "--sites", paramLabel = "N", description = "How many sites (default: one for 30 openings).")
    @Nullable
    Integer sites;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed (default: ${DEFAULT-VALUE}).")
    long seed;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FOLDER",
            description = "Folder to write to; made if absent.")
    @Nullable
    Path out;

    @Override
    public Integer call() {
        Path target = Objects.requireNonNull(out);
        JobFolder folder = folder();
        try {
            FolderWriter.write(folder, target);
        } catch (IOException e) {
            throw refusal("--out %s cannot be written to: %s".formatted(target, e.getMessage()));
        }
        say("%s: %d openings of %d sites, %d crews, %d shifts"
                .formatted(
                        target,
                        folder.openings().size(),
                        folder.sites().size(),
                        folder.crews().size(),
                        folder.shifts().size()));
        return ExitCodes.DONE;
    }

    private JobFolder folder() {
        int wanted = sites == null ? GeneratedFolder.usualSites(openings) : sites;
        try {
            return GeneratedFolder.of(openings, wanted, seed);
        } catch (IllegalArgumentException e) {
            throw refusal(String.valueOf(e.getMessage()));
        }
    }

    private ParameterException refusal(String message) {
        return new ParameterException(command().commandLine(), message);
    }

    private void say(String line) {
        command().commandLine().getOut().println(line);
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
