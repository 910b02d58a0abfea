package drylap.cli;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.windowschedule.Choices;
import drylap.windowschedule.Choices.StandIns;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Field;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.LengthUnit;
import drylap.windowschedule.LetterMeaning;
import drylap.windowschedule.Sheet;
import drylap.windowschedule.Starts;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is said once for a whole window schedule. */
final class ScheduleOptions {
    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description = "The sheet (default: the first with titles of a schedule).")
    @Nullable
    String sheet;

    @Option(names = "--unit", paramLabel = "UNIT", description = "Of numbers without a unit: in, ft, mm, cm or m.")
    @Nullable
    LengthUnit unit;

    @Option(
            names = "--letters",
            paramLabel = "MEANING",
            description = "What a bare A or B means: jamb-flashing (ASTM E2112), barrier-over or barrier-behind.")
    @Nullable
    LetterMeaning letters;

    @Option(
            names = "--column",
            paramLabel = "FIELD=LETTERS",
            description = "A column of another title, such as mark=C; several may be given.")
    Map<String, String> columns = new LinkedHashMap<>();

    @Option(
            names = "--elevation",
            paramLabel = "NAME=FACADE",
            description = "The facade of an elevation; several may be given.")
    Map<String, String> walls = new LinkedHashMap<>();

    @Option(
            names = "--storey",
            paramLabel = "NAME=N",
            description = "The level of a storey that has a name and no number; several may be given.")
    Map<String, Integer> storeys = new LinkedHashMap<>();

    @Option(names = "--facade", paramLabel = "FACADE", description = "Of rows without an elevation.")
    @Nullable
    String wall;

    @Option(names = "--level", paramLabel = "N", description = "Of rows without a level.")
    @Nullable
    Integer level;

    @Option(names = "--frame", paramLabel = "FRAME", description = "Of rows without a material.")
    @Nullable
    Frame frame;

    @Option(names = "--method", paramLabel = "METHOD", description = "Of rows without a method.")
    @Nullable
    Method method;

    @Option(names = "--approach", paramLabel = "APPROACH", description = "Of new openings.")
    @Nullable
    Approach approach;

    @Option(names = "--second-layer", paramLabel = "LAYER", description = "Of new openings.")
    @Nullable
    SecondLayer secondLayer;

    @Option(
            names = "--delivered-on",
            paramLabel = "DATE",
            description = "From when on the windows of new openings may be set.")
    @Nullable
    LocalDate deliveredOn;

    @Option(names = "--water-test", description = "New openings get a water test.")
    boolean waterTest;

    @Option(names = "--priority", paramLabel = "N", description = "Of new openings, 0 to 100 (default: 0).")
    int priority;

    @Option(
            names = "--prefix",
            paramLabel = "TEXT",
            description = "Before each mark, to name its openings (default: none).")
    String prefix = "";

    @Option(
            names = "--change-begun",
            paramLabel = "OPENING",
            description =
                    "Change this opening although work has begun there, but for its method; several may be given.")
    List<String> agreed = List.of();

    /** @throws IllegalArgumentException where an option names what is not there: it says which, and what would be accepted */
    Draft draft(JobFolder folder, SiteId site, FileReading.Read file) {
        Sheet chosen = sheet(file.sheets());
        Header header = Header.find(chosen)
                .orElseThrow(() -> new IllegalArgumentException(
                        "%s: no row of titles was found in sheet %s; accepted: a row with at least the titles Mark and a size"
                                .formatted(file.file(), chosen.name())));
        Draft draft = Draft.of(file.file(), chosen, header, choices(folder, site));
        for (var column : columns.entrySet())
            draft = draft.withColumn(field(column.getKey()), column(chosen, column.getValue()));
        for (String opening : agreed) draft = draft.agreeing(new OpeningId(opening), true);
        return draft;
    }

    private Choices choices(JobFolder folder, SiteId site) {
        if (priority < 0 || priority > 100)
            throw new IllegalArgumentException("--priority: %d; accepted: 0 to 100".formatted(priority));
        storeys.forEach((name, number) -> {
            if (number < 1 || number > Choices.HIGHEST_LEVEL)
                throw new IllegalArgumentException("--storey: %s=%d; accepted: a level from 1 to %d"
                        .formatted(name, number, Choices.HIGHEST_LEVEL));
        });
        Choices first = Starts.of(folder, site);
        StandIns start = first.standIns();
        var standIns = new StandIns(
                wall,
                level,
                frame == null ? start.frame() : frame,
                method == null ? start.method() : method,
                approach == null ? start.approach() : approach,
                secondLayer == null ? start.secondLayer() : secondLayer,
                deliveredOn == null ? start.deliveredOn() : deliveredOn,
                waterTest,
                priority);
        return new Choices(site, unit, letters, walls, storeys, standIns, prefix);
    }

    private Sheet sheet(List<Sheet> sheets) {
        if (sheet == null)
            return sheets.stream()
                    .filter(one -> Header.find(one).isPresent())
                    .findFirst()
                    .orElse(sheets.getFirst());
        return sheets.stream()
                .filter(one -> one.name().equals(sheet))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--sheet: there is no sheet %s; accepted: %s"
                        .formatted(
                                sheet,
                                String.join(
                                        ", ", sheets.stream().map(Sheet::name).toList()))));
    }

    private static Field field(String code) {
        return Field.all()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--column: %s is no field; accepted: %s"
                        .formatted(code, drylap.kernel.Coded.codes(Field.class))));
    }

    private static int column(Sheet sheet, String letters) {
        return IntStream.range(0, sheet.columns())
                .filter(column -> Sheet.letters(column).equalsIgnoreCase(letters))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--column: there is no column %s; accepted: A to %s"
                        .formatted(letters, Sheet.letters(Math.max(0, sheet.columns() - 1)))));
    }
}
