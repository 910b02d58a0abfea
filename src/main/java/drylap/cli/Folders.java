package drylap.cli;

import drylap.climate.MonthlyNormals;
import drylap.intake.ClimateReader;
import drylap.intake.ClimateReading;
import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.intake.PlanReader;
import drylap.intake.PlanReading;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what a command is pointed at; what is refused is printed, all of it, and the answer is empty. */
final class Folders {
    private final PrintWriter err;

    Folders(PrintWriter err) {
        this.err = err;
    }

    Optional<JobFolder> job(Path path) {
        return switch (FolderReader.read(FolderSource.of(path))) {
            case FolderReading.Read(JobFolder folder, List<String> notes) -> {
                notes.forEach(note -> err.println("note: " + note));
                yield Optional.of(folder);
            }
            case FolderReading.Refused refused -> refuse(path, refused.text());
        };
    }

    Optional<List<PublishedVisit>> published(Path path, JobFolder folder) {
        return switch (PlanReader.published(FolderSource.of(path), folder)) {
            case PlanReading.Read<List<PublishedVisit>>(var visits) -> Optional.of(visits);
            case PlanReading.Refused<List<PublishedVisit>> refused -> refuse(path, refused.text());
        };
    }

    /** @param file none where no normals are given */
    Optional<List<MonthlyNormals>> normals(@Nullable Path file, JobFolder folder) {
        if (file == null) return Optional.of(List.of());
        return switch (ClimateReader.read(file, folder)) {
            case ClimateReading.Read(List<MonthlyNormals> normals) -> Optional.of(normals);
            case ClimateReading.Refused refused -> {
                err.println(refused.text());
                yield Optional.empty();
            }
        };
    }

    private <T> Optional<T> refuse(Path path, String problems) {
        err.println(problems);
        err.println(path + " was not taken; nothing was written.");
        return Optional.empty();
    }
}
