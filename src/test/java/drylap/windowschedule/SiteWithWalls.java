package drylap.windowschedule;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.ui.QuayFolder;
import drylap.windowschedule.Choices.StandIns;
import drylap.windowschedule.files.ScheduleFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;

/** The folder of Quay Nine with four walls, and drafts of schedules for it. */
public final class SiteWithWalls {
    public static final SiteId QUAY = new SiteId("Q");

    private SiteWithWalls() {}

    public static JobFolder folder() {
        return new QuayFolder()
                .with("facades.csv", "M,south,180,", "M,south,180,\nQ,north,352,\nQ,east,82,\nQ,south,172,")
                .folder();
    }

    public static Choices choices() {
        return new Choices(
                QUAY,
                null,
                null,
                Map.of(),
                Map.of(),
                new StandIns(
                        null,
                        null,
                        Frame.VINYL,
                        Method.A1,
                        Approach.DRAINAGE,
                        SecondLayer.NONE,
                        LocalDate.of(2026, 4, 20),
                        false,
                        0),
                "");
    }

    public static Draft draft(String csv) {
        return draft("schedule.csv", csv.getBytes(StandardCharsets.UTF_8));
    }

    public static Draft draft(String file, byte[] bytes) {
        var sheets = ((FileReading.Read) ScheduleFile.read(file, bytes)).sheets();
        return Draft.of(file, sheets.getFirst(), Header.find(sheets.getFirst()).orElseThrow(), choices());
    }

    public static byte[] sixHundred() {
        try (InputStream in = SiteWithWalls.class.getResourceAsStream("/windowschedule/six-hundred.xlsx")) {
            return Objects.requireNonNull(in).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
