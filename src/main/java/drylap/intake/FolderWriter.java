package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.planning.JobFolder;
import drylap.sites.Site;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a job folder that reads back equal. All ten files are written, so that none of an older folder lingers. */
public final class FolderWriter {
    private FolderWriter() {}

    /** @throws IOException where the target cannot be written */
    public static void write(JobFolder folder, Path target) throws IOException {
        write(lines(folder), target);
    }

    /** The files of the folder by name, as bytes. */
    public static Map<String, byte[]> files(JobFolder folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Lines lines : lines(folder)) files.put(lines.file(), bytes(lines));
        return files;
    }

    private static List<Lines> lines(JobFolder folder) {
        Zones zones = Zones.of(folder.sites());
        return List.of(
                SiteRows.write(folder.sites()),
                FacadeRows.write(folder.facades()),
                OpeningRows.write(folder.openings(), zones),
                CrewRows.write(folder.crews()),
                ShiftRows.write(folder.shifts()),
                TravelRows.write(folder.travel()),
                ForecastRows.write(folder.forecasts(), zones),
                LabourRows.write(folder.labour()),
                RuleRows.write(
                        folder.rules(), folder.sites().stream().map(Site::id).toList()),
                VisitRows.write(folder.published(), zones));
    }

    /** Each file appears whole or not at all. */
    static void write(List<Lines> files, Path target) throws IOException {
        Files.createDirectories(target);
        for (Lines lines : files) {
            Path beside = target.resolve("." + lines.file() + ".part");
            try {
                Files.write(beside, bytes(lines));
                Files.move(beside, target.resolve(lines.file()), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        }
    }

    private static byte[] bytes(Lines lines) {
        return lines.text().getBytes(StandardCharsets.UTF_8);
    }
}
