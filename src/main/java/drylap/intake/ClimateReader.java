package drylap.intake;

import drylap.climate.MonthlyNormals;
import drylap.intake.csv.Header;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import java.nio.file.Path;
import java.time.Month;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads monthly normals: rain, and days that cold or gusts take; one row a month, for all sites or, with a site, for that one. */
public final class ClimateReader {
    private static final String[] COLUMNS = {"month", "rain_mm", "rain_days", "site?", "cold_days?", "gust_days?"};

    private record Named(@Nullable SiteId site, int month) {}

    private final Known known;
    private final Set<Named> named = new HashSet<>();
    private final List<MonthlyNormals> read = new ArrayList<>();

    private ClimateReader(JobFolder folder) {
        known = Known.of(folder);
    }

    public static ClimateReading read(Path file, JobFolder folder) {
        return read(String.valueOf(file.getFileName()), FolderSource.of(file), folder);
    }

    /** A file that was sent. */
    public static ClimateReading readAlone(String name, byte[] text, JobFolder folder) {
        return read(name, FolderSource.inMemory(name, Map.of(name, text)), folder);
    }

    private static ClimateReading read(String name, FolderSource source, JobFolder folder) {
        Problems problems = new Problems();
        FolderFiles files = new FolderFiles(source, Limits.STANDARD, problems);
        ClimateReader reader = new ClimateReader(folder);
        if (problems.isEmpty()) {
            Table table = files.required(Header.of(name, COLUMNS));
            table.each(reader::enter);
            FolderFiles.checkRows(table);
        }
        return problems.isEmpty()
                ? new ClimateReading.Read(reader.read)
                : new ClimateReading.Refused(new FolderReading.Refused(problems.kept(), problems.more()));
    }

    private void enter(Row row) {
        SiteId site = row.blank("site") ? null : new SiteId(row.text("site"));
        if (site != null) known.sites.require(row, "site", site);
        int month = row.whole("month", "", 1, 12);
        double millimetres = row.number("rain_mm", "mm", 0, 5000);
        double days = row.number("rain_days", "days", 0, 31);
        double cold = row.blank("cold_days") ? 0 : row.number("cold_days", "days", 0, 31);
        double gusts = row.blank("gust_days") ? 0 : row.number("gust_days", "days", 0, 31);
        if (!row.sound()) return;
        if (!named.add(new Named(site, month)))
            row.wrong("month", FolderWords.MONTH_TWICE.with(), FolderWords.MONTH_ONCE.with());
        try {
            read.add(new MonthlyNormals(site, month, millimetres, days, cold, gusts));
        } catch (IllegalArgumentException e) {
            String column = days > lengthOf(month) ? "rain_days" : cold > lengthOf(month) ? "cold_days" : "gust_days";
            row.wrong(
                    column, FolderWords.NO_FIT.with(String.valueOf(e.getMessage())), FolderWords.DAYS_OF_MONTH.with());
        }
    }

    private static int lengthOf(int month) {
        return Month.of(month).minLength();
    }
}
