package drylap.ui.windowcrew;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.roughopening.RoughMeasurement;
import drylap.roughopening.RoughOpenings;
import drylap.roughopening.RoughResult;
import drylap.roughopening.RoughSizes;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.RoughSheet;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** What the page of a rough opening asks for, and records. */
@Component
class RoughDesk {
    private final RoughOpenings rough;
    private final JobFolders folders;

    RoughDesk(RoughOpenings rough, JobFolders folders) {
        this.rough = rough;
        this.folders = folders;
    }

    /** None where it is not there, or not theirs. */
    Optional<Opening> opening(Person who, FolderId folder, OpeningId opening) {
        try {
            return Optional.of(rough.opening(who, folder, opening));
        } catch (NotAllowed notTheirs) {
            return Optional.empty();
        }
    }

    boolean mayMeasure(Person who, Opening opening) {
        return who.may(Operation.MEASURE_OPENING, opening.facade().site());
    }

    /** Newest first. */
    List<RoughSheet> sheets(Person who, FolderId folder, Opening opening) {
        List<RoughMeasurement> all = rough.of(who, folder, opening.id());
        if (all.isEmpty()) return List.of();
        var say = new Speech(who.reading());
        ZoneId zone = folders.load(folder).sites().stream()
                .filter(site -> site.id().equals(opening.facade().site()))
                .findFirst()
                .map(Site::zone)
                .orElse(ZoneOffset.UTC);
        return all.stream().map(one -> RoughSheet.of(say, one, zone)).toList();
    }

    RoughResult record(Person who, FolderId folder, OpeningId opening, UUID key, RoughSizes sizes, String note) {
        return rough.record(who, folder, opening, key, sizes, note);
    }
}
