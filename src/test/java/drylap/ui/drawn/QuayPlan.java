package drylap.ui.drawn;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.StoredFolder;
import drylap.planning.StoredPlan;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.ui.QuayFolder;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** Plans of the quay folder, written by hand visit by visit. */
final class QuayPlan {
    static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    static final LocalDate TUESDAY = MONDAY.plusDays(1);

    private final JobFolder folder;
    private final List<Visit> visits = new ArrayList<>();
    private final List<UnplannedTask> unplanned = new ArrayList<>();
    private final List<CoverNow> cover = new ArrayList<>();
    private Instant start = at(MONDAY, "07:00");

    QuayPlan() {
        this(new QuayFolder());
    }

    QuayPlan(QuayFolder quay) {
        folder = quay.folder();
    }

    /** A proposal made in the middle of the week. */
    QuayPlan from(LocalDate date, String clock) {
        start = at(date, clock);
        return this;
    }

    QuayPlan visit(String crew, LocalDate date, String from, String until, Task task, String opening) {
        var designed = folder.openings().stream()
                .filter(one -> one.id().value().equals(opening))
                .findFirst()
                .orElseThrow();
        visits.add(new Visit(
                new CrewId(crew),
                date,
                visits.size() + 1,
                designed.facade(),
                designed.level(),
                designed.id(),
                task,
                at(date, from),
                at(date, until)));
        return this;
    }

    QuayPlan without(String opening, Task task, UnplannedReason reason, String detail) {
        unplanned.add(new UnplannedTask(new OpeningId(opening), task, reason, detail));
        return this;
    }

    QuayPlan cover(String opening, String nextRain, int minutes) {
        cover.add(
                new CoverNow(new OpeningId(opening), at(MONDAY.minusDays(1), "15:30"), at(MONDAY, nextRain), minutes));
        return this;
    }

    FolderShown shown() {
        var plan = new Plan(
                start, at(TUESDAY, "15:30"), visits, unplanned, cover, List.of(), new Ledger(List.of(), 0, 0, 0));
        return new FolderShown(
                stored(),
                folder,
                new PlanChoice(new StoredPlan(new PlanId(1), Instant.EPOCH, plan), null, null, false));
    }

    static FolderShown unplannedFolder() {
        return unplannedFolder(new QuayFolder());
    }

    static FolderShown unplannedFolder(QuayFolder quay) {
        return new FolderShown(stored(), quay.folder(), PlanChoice.NONE);
    }

    static FacadeId west() {
        return new FacadeId(new SiteId("Q"), "west");
    }

    static Instant at(LocalDate date, String clock) {
        return OffsetDateTime.parse("%sT%s-07:00".formatted(date, clock)).toInstant();
    }

    private static StoredFolder stored() {
        return new StoredFolder(new FolderId(1), "quay", at(MONDAY, "06:00"), 2, 5);
    }
}
