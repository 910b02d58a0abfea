package drylap.intake;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What has been read so far of a folder, to resolve the references of later files. */
final class Known {
    private record CrewDate(CrewId crew, LocalDate date) {}

    final Ids<SiteId> sites = new Ids<>(Ids.Kind.SITE, ContractFiles.SITES);
    final Ids<FacadeId> facades = new Ids<>(Ids.Kind.FACADE, ContractFiles.FACADES);
    final Ids<OpeningId> openings = new Ids<>(Ids.Kind.OPENING, ContractFiles.OPENINGS);
    final Ids<CrewId> crews = new Ids<>(Ids.Kind.CREW, ContractFiles.CREWS);
    final Map<OpeningId, Opening> openingById = new HashMap<>();
    final Map<CrewId, Crew> crewById = new HashMap<>();
    private @Nullable Map<CrewDate, Shift> shifts;

    void enterShifts(List<Shift> all) {
        shifts = new HashMap<>();
        for (Shift shift : all) shifts.put(new CrewDate(shift.crew(), shift.date()), shift);
    }

    /** Whether the visit lies within a shift of its crew; yes as well while no shifts could be read. */
    boolean onShift(Visit visit) {
        if (shifts == null) return true;
        Shift shift = shifts.get(new CrewDate(visit.crew(), visit.date()));
        return shift != null
                && !visit.start().isBefore(shift.startsAt())
                && !visit.end().isAfter(shift.limit());
    }

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
        known.enterShifts(folder.shifts());
        return known;
    }
}
