package drylap.ui.planner;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.ScheduleResult;
import drylap.planning.WindowSchedules;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.ui.drawn.FolderShown;
import drylap.windowschedule.Draft;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.ScheduleFiles;
import drylap.windowschedule.Takings;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Service;

/** What the page of window schedules asks for, and takes in. */
@Service
final class ScheduleDesk {
    private final WindowSchedules schedules;
    private final SignedIn signedIn;

    ScheduleDesk(WindowSchedules schedules, SignedIn signedIn) {
        this.schedules = schedules;
        this.signedIn = signedIn;
    }

    /** The sites of the folder whose openings this person may add to. */
    List<Site> sites(FolderShown shown) {
        Person who = signedIn.person();
        return shown.folder().sites().stream()
                .filter(site -> who.may(Operation.IMPORT_FOLDER, site.id()))
                .toList();
    }

    FileReading open(SiteId site, String name, byte[] bytes) {
        signedIn.person().demand(Operation.IMPORT_FOLDER, site);
        return ScheduleFiles.read(name, bytes);
    }

    Set<OpeningId> begun(FolderId folder) {
        return schedules.begun(signedIn.person(), folder);
    }

    Outcome outcome(FolderShown shown, Draft draft, Set<OpeningId> begun) {
        return Outcomes.of(draft, shown.folder(), begun);
    }

    ScheduleResult take(FolderShown shown, Draft draft, Outcome outcome) {
        return schedules.take(signedIn.person(), shown.stored().id(), Takings.of(draft, outcome));
    }
}
