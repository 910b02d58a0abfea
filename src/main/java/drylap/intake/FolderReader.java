package drylap.intake;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.intake.csv.Header;
import drylap.intake.csv.Table;
import drylap.kernel.RuleBook;
import drylap.planning.JobFolder;
import drylap.planning.LabourTable;
import drylap.planning.PublishedVisit;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Reads a job folder: all of it, or every problem of it together. */
public final class FolderReader {
    private final FolderFiles files;
    private final Problems problems;
    private final Known known = new Known();

    private FolderReader(FolderFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    /** Never throws for what the folder holds; trouble with the disk is a problem of the file too. */
    public static FolderReading read(FolderSource source) {
        return read(source, Limits.STANDARD);
    }

    static FolderReading read(FolderSource source, Limits limits) {
        Problems problems = new Problems();
        FolderFiles files = new FolderFiles(source, limits, problems);
        if (!problems.isEmpty()) return FolderReading.Refused.of(problems);
        return new FolderReader(files, problems).read();
    }

    private FolderReading read() {
        List<Site> sites = needed(ContractFiles.SITES, known.sites, table -> SiteRows.read(table, known));
        List<Facade> facades = needed(ContractFiles.FACADES, known.facades, table -> FacadeRows.read(table, known));
        List<Opening> openings =
                needed(ContractFiles.OPENINGS, known.openings, table -> OpeningRows.read(table, known));
        List<Crew> crews = needed(ContractFiles.CREWS, known.crews, table -> CrewRows.read(table, known));
        List<Shift> shifts = needed(
                ContractFiles.SHIFTS,
                new Ids<>(Ids.Kind.SHIFT, ContractFiles.SHIFTS),
                table -> ShiftRows.read(table, known));
        if (problems.isEmpty()) known.enterShifts(shifts);
        TravelTimes travel = TravelRows.read(files.optional(ContractFiles.TRAVEL), known);
        List<Forecast> forecasts = ForecastRows.read(files.optional(ContractFiles.FORECAST), sites, known);
        LabourTable labour = labour(openings);
        RuleBook rules = RuleRows.read(files.optional(ContractFiles.RULES), known);
        List<PublishedVisit> published = VisitRows.read(files.optional(ContractFiles.PUBLISHED), known);
        if (!problems.isEmpty()) return FolderReading.Refused.of(problems);
        JobFolder folder =
                new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, labour, rules, published);
        return new FolderReading.Read(folder, Notes.of(folder, files.namesBeside(Set.copyOf(ContractFiles.JOB))));
    }

    private <T> List<T> needed(Header header, Ids<?> ids, Function<Table, List<T>> read) {
        Table table = files.required(header);
        List<T> rows = read.apply(table);
        FolderFiles.checkRows(table);
        if (!table.complete()) ids.markIncomplete();
        return rows;
    }

    private LabourTable labour(List<Opening> openings) {
        Table table = files.required(ContractFiles.LABOUR);
        LabourTable labour = LabourRows.read(table);
        if (table.sound()) LabourRows.checkServed(table, labour, openings);
        return labour;
    }
}
