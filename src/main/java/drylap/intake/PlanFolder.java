package drylap.intake;

import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.OpenWindow;
import drylap.planning.PublishedVisit;
import drylap.planning.UnplannedTask;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan folder as it stands on disk, not judged; null where its file is absent. */
public record PlanFolder(
        List<PublishedVisit> visits,
        @Nullable List<UnplannedTask> unplanned,
        @Nullable List<CoverNow> coverNow,
        @Nullable List<OpenWindow> openHours,
        @Nullable Ledger ledger) {}
