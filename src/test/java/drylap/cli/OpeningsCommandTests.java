package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.buildingmodel.ModelText;
import drylap.buildingmodel.ModelText.Unit;
import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.intake.FolderWriter;
import drylap.windowschedule.SiteWithWalls;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OpeningsCommandTests extends CommandLineOverAJob {
    @BeforeEach
    void writeAFolder() throws IOException {
        FolderWriter.write(SiteWithWalls.folder(), place.resolve("job"));
    }

    private int openings(String csv, String... more) throws IOException {
        Files.writeString(place.resolve("schedule.csv"), csv);
        return run(Stream.concat(
                        Stream.of(
                                "openings",
                                "--schedule",
                                in("schedule.csv"),
                                "--in",
                                in("job"),
                                "--out",
                                in("with"),
                                "--site",
                                "Q"),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void a_schedule_goes_into_a_folder_that_reads_back() throws IOException {
        assertThat(openings(
                        "Mark,Qty,Width,Height,Floor,Elevation\nA,2,36,48,1,North\n", "--unit", "in", "--method", "A1"))
                .as(err.toString())
                .isZero();
        var read = (FolderReading.Read) FolderReader.read(FolderSource.of(place.resolve("with")));
        assertThat(read.folder().openings()).extracting(one -> one.id().value()).endsWith("A-1", "A-2");
        assertThat(out.toString()).contains("2 new, 0 changed", "never a statement that work at height is safe");
    }

    @Test
    void faults_are_listed_by_row_and_column_and_nothing_is_written() throws IOException {
        assertThat(openings("Mark,Width (mm),Height (mm),Floor,Elevation\nA,wide,1500,1,Yard\n"))
                .isEqualTo(2);
        assertThat(List.of(err.toString().split("\n")))
                .contains(
                        "schedule.csv:2 E elevation: is no facade of the site (Yard) \u2013 west, north, east, south, or a facade "
                                + "chosen for this elevation, is accepted",
                        "schedule.csv:2 B frame width: is not a length (wide) \u2013 a length such as 3'-0 1/2\", 36 1/2\", 42.5 in, "
                                + "1067 mm or 1.067 m is accepted",
                        "Nothing was written.");
        assertThat(place.resolve("with")).doesNotExist();
    }

    @Test
    void a_building_model_is_taken_in_as_a_schedule_is() throws IOException {
        // true north 8 degrees clockwise of +Y, so that the house's south wall faces 172 degrees, as the facade does
        String model = new ModelText("IFC2X3", Unit.METRE, "(0.13917310096,0.99026806874)")
                .storey("Ground floor", 0)
                .window("W-1", "Ground floor south", 500, 900, 900, 1_200)
                .toString();
        assertThat(openings(model, "--method", "A1")).isEqualTo(2);
        assertThat(err.toString()).contains("G level: is not a whole number (Ground floor)");
        assertThat(openings(model, "--method", "A1", "--storey", "Ground floor=0"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("--storey: Ground floor=0; accepted: a level from 1 to 200");
        assertThat(openings(model, "--method", "A1", "--storey", "Ground floor=1"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("IFC2X3, lengths in metre", "True north lies -8.0\u00b0", "1 new, 0 changed");
        var read = (FolderReading.Read) FolderReader.read(FolderSource.of(place.resolve("with")));
        assertThat(read.folder().openings().getLast().facade().facade()).isEqualTo("south");
    }

    @Test
    void options_that_name_what_is_not_there_are_refused() throws IOException {
        assertThat(openings("Mark,Width,Height\nA,3',4'\n", "--column", "size=A"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("--column: size is no field; accepted: mark, quantity");
        assertThat(run(
                        "openings",
                        "--schedule",
                        in("schedule.csv"),
                        "--in",
                        in("job"),
                        "--out",
                        in("with"),
                        "--site",
                        "X"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no site X");
    }
}
