package drylap.ui.planner;

import drylap.climate.KeptNormals;
import drylap.climate.MonthlyNormals;
import drylap.intake.ClimateReader;
import drylap.intake.ClimateReading;
import drylap.kernel.FolderId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.season.Season;
import drylap.season.SeasonRequest;
import drylap.season.SiteOutlook;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.ui.drawn.FolderShown;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Service;

/** The outlook of a site's season, and the monthly normals that it is drawn from. */
@Service
class SeasonDesk {
    private final CurrentFolders folders;
    private final KeptNormals kept;
    private final Clock clock;

    SeasonDesk(CurrentFolders folders, KeptNormals kept, Clock clock) {
        this.folders = folders;
        this.kept = kept;
        this.clock = clock;
    }

    /** Of one site; but the crews that it shares with others are told from the whole folder. Takes up to seconds. */
    SiteOutlook outlook(Person who, FolderId folder, Site site) {
        who.demand(Operation.SEE_SEASON, site.id());
        JobFolder whole = folders.load(folder);
        return Season.of(whole, site.id(), new SeasonRequest(from(whole), kept.of(folder)));
    }

    /** What is planned for later begins later. */
    private Instant from(JobFolder folder) {
        Instant now = clock.instant();
        return folder.firstStart().filter(now::isBefore).orElse(now);
    }

    boolean mayChange(Person who, Site site) {
        return who.may(Operation.CHANGE_CLIMATE, site.id());
    }

    boolean hasNormals(Person who, FolderId folder, Site site) {
        who.demand(Operation.SEE_SEASON, site.id());
        return kept.of(folder).stream().anyMatch(one -> site.id().equals(one.site()));
    }

    /** Keeps all of a file for the sites that it names, rows without one for the site given; or says what is wrong with it. */
    List<Saying> bring(Person who, FolderShown shown, Site site, String file, byte[] text) {
        who.demand(Operation.CHANGE_CLIMATE, site.id());
        return switch (ClimateReader.readAlone(file, text, shown.folder())) {
            case ClimateReading.Refused(var problems) -> FileProblems.of(problems);
            case ClimateReading.Read(List<MonthlyNormals> normals) -> {
                List<Saying> twice = twice(normals, site);
                if (!twice.isEmpty()) yield twice;
                kept.keep(who, shown.stored().id(), site.id(), normals);
                yield List.of();
            }
        };
    }

    private static List<Saying> twice(List<MonthlyNormals> normals, Site site) {
        return normals.stream()
                .filter(one -> one.site() == null)
                .filter(one -> normals.stream()
                        .anyMatch(other ->
                                other.month() == one.month() && site.id().equals(other.site())))
                .map(one -> Saying.of(
                        "month {0} of {1} is given with the site and without; accepted: once", one.month(), site.id()))
                .toList();
    }

    void remove(Person who, FolderShown shown, Site site) {
        kept.drop(who, shown.stored().id(), site.id());
    }
}
