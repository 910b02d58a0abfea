package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.planning.JobFolder;
import drylap.weather.Forecast;
import drylap.whatif.Change;
import drylap.whatif.Scenario;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads scenarios against the job folder that they change: one change a row, those of one name together. */
public final class ScenarioReader {
    static final String[] COLUMNS = {
        "scenario",
        "change",
        "crew?",
        "like?",
        "site?",
        "facade?",
        "opening?",
        "date?",
        "days?",
        "from?",
        "until?",
        "percent?",
        "file?"
    };

    private final String name;
    private final FolderSource source;
    private final Function<String, FolderSource> beside;
    private final JobFolder folder;
    private final Problems problems = new Problems();
    private final Map<String, List<Change>> changes = new LinkedHashMap<>();

    private ScenarioReader(String name, FolderSource source, Function<String, FolderSource> beside, JobFolder folder) {
        this.name = name;
        this.source = source;
        this.beside = beside;
        this.folder = folder;
    }

    /** A forecast that a row names is looked for beside the file. */
    public static ScenarioReading read(Path file, JobFolder folder) {
        return new ScenarioReader(
                        String.valueOf(file.getFileName()),
                        FolderSource.of(file),
                        other -> FolderSource.of(file.resolveSibling(other)),
                        folder)
                .read();
    }

    /** Nothing lies beside a file that was sent: whoever sends one must not have other files of this machine read. */
    public static ScenarioReading readAlone(String name, byte[] text, JobFolder folder) {
        FolderSource sent = FolderSource.inMemory(name, Map.of(name, text));
        return new ScenarioReader(name, sent, other -> FolderSource.inMemory(other, Map.of()), folder).read();
    }

    private ScenarioReading read() {
        FolderFiles files = new FolderFiles(source, Limits.STANDARD, problems);
        if (problems.isEmpty()) {
            Table table = files.required(Header.of(name, COLUMNS));
            ChangeRows rows = new ChangeRows(folder, this::forecast);
            table.each(row -> enter(row, rows));
            FolderFiles.checkRows(table);
        }
        return problems.isEmpty()
                ? new ScenarioReading.Read(changes.entrySet().stream()
                        .map(one -> new Scenario(one.getKey(), one.getValue()))
                        .toList())
                : new ScenarioReading.Refused(new FolderReading.Refused(problems.kept(), problems.more()));
    }

    private void enter(Row row, ChangeRows rows) {
        String name = row.text("scenario");
        if (name.equals(Scenario.AS_IT_IS))
            row.wrong("scenario", FolderWords.NAME_AS_IT_IS.with(), FolderWords.ANOTHER_NAME.with());
        Change change = rows.read(row);
        if (!row.sound() || change == null) return;
        List<Change> own = changes.computeIfAbsent(name, _ -> new ArrayList<>());
        own.add(change);
        checkTogether(row, new Scenario(name, own));
    }

    /** Each change alone may be sound, and not after those before it. */
    private void checkTogether(Row row, Scenario scenario) {
        try {
            scenario.applyTo(folder);
        } catch (IllegalArgumentException e) {
            row.wrong("change", FolderWords.CANNOT_BE.with(String.valueOf(e.getMessage())), FolderWords.ALLOWED.with());
        }
    }

    private @Nullable List<Forecast> forecast(Row row) {
        FolderSource other = beside.apply(row.text("file"));
        int before = problems.kept().size();
        FolderFiles files = new FolderFiles(other, Limits.STANDARD, problems);
        boolean single = other instanceof SingleFile && files.names().size() == 1;
        if (!single) {
            row.wrong("file", FolderWords.NO_FILE.with(), FolderWords.FILE_BESIDE.with());
            return null;
        }
        Table table = files.required(
                ContractFiles.FORECAST.named(files.names().iterator().next()));
        List<Forecast> read = ForecastRows.read(table, folder.sites(), Known.of(folder));
        return problems.kept().size() == before ? read : null;
    }
}
