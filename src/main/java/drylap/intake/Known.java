package drylap.intake;

import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import java.util.HashMap;
import java.util.Map;

/** What has been read so far of a folder, to resolve the references of later files. */
final class Known {
    final Ids<SiteId> sites = new Ids<>("site", ContractFiles.SITES);
    final Ids<FacadeId> facades = new Ids<>("facade", ContractFiles.FACADES);
    final Ids<OpeningId> openings = new Ids<>("opening", ContractFiles.OPENINGS);
    final Ids<CrewId> crews = new Ids<>("crew", ContractFiles.CREWS);
    final Map<OpeningId, Opening> openingById = new HashMap<>();
    final Map<CrewId, Crew> crewById = new HashMap<>();

    static Known of(JobFolder folder) {
        Known known = new Known();
        folder.sites().forEach(site -> known.sites.enter(site.id()));
        folder.facades().forEach(facade -> known.facades.enter(facade.id()));
        folder.openings().forEach(opening -> {
            known.openings.enter(opening.id());
            known.openingById.put(opening.id(), opening);
        });
        folder.crews().forEach(crew -> {
            known.crews.enter(crew.id());
            known.crewById.put(crew.id(), crew);
        });
        return known;
    }
}
