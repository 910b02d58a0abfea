package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Table;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads plan folders back against the job folder that they plan. */
public final class PlanReader {
    private final FolderSource source;
    private final Problems problems = new Problems();
    private final FolderFiles files;
    private final Known known;

    private PlanReader(FolderSource source, JobFolder folder) {
        this.source = source;
        this.files = new FolderFiles(source, Limits.STANDARD, problems);
        this.known = Known.of(folder);
    }

    /**
     * The visits to plan from: those of {@code visits.csv}, or of the one file that the source is. Refused unless each is
     * a visit that a plan of the folder could hold.
     */
    public static PlanReading<List<PublishedVisit>> published(FolderSource source, JobFolder folder) {
        PlanReader reader = new PlanReader(source, folder);
        return reader.answer(() -> VisitRows.read(reader.visits(), reader.known));
    }

    /**
     * The whole plan folder, for an audit: cells and references are checked, the plan is not judged. Only {@code visits.csv}
     * must be there.
     */
    public static PlanReading<PlanFolder> read(FolderSource source, JobFolder folder) {
        PlanReader reader = new PlanReader(source, folder);
        return reader.answer(reader::folder);
    }

    private <T> PlanReading<T> answer(java.util.function.Supplier<T> read) {
        if (!problems.isEmpty()) return refused();
        T value = read.get();
        return problems.isEmpty() ? new PlanReading.Read<>(value) : refused();
    }

    private <T> PlanReading<T> refused() {
        return new PlanReading.Refused<>(problems.kept(), problems.more());
    }

    private PlanFolder folder() {
        return new PlanFolder(
                VisitRows.readForAudit(visits(), known),
                ifThere(ContractFiles.UNPLANNED, table -> PlanRows.unplanned(table, known)),
                ifThere(ContractFiles.COVER_NOW, table -> PlanRows.coverNow(table, known)),
                ifThere(ContractFiles.OPEN_HOURS, table -> PlanRows.openHours(table, known)),
                ifThere(ContractFiles.LEDGER, PlanRows::ledger));
    }

    private Table visits() {
        boolean single = source instanceof SingleFile && files.names().size() == 1;
        String file = single ? files.names().iterator().next() : ContractFiles.VISITS.file();
        return files.required(ContractFiles.PUBLISHED.named(file));
    }

    private <T> @Nullable T ifThere(Header header, Function<Table, T> read) {
        return files.names().contains(header.file()) ? read.apply(files.required(header)) : null;
    }
}
