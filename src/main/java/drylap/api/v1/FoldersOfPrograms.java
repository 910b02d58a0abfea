package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.crews.Crews;
import drylap.planning.StoredFolder;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.Facade;
import drylap.sites.Facades;
import drylap.sites.Site;
import drylap.sites.Sites;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Job folders, and what in them is designed rather than done. */
@RestController
final class FoldersOfPrograms {
    private final FolderDoor door;
    private final Sites sites;
    private final Facades facades;
    private final Crews crews;
    private final SignedIn signedIn;

    FoldersOfPrograms(FolderDoor door, Sites sites, Facades facades, Crews crews, SignedIn signedIn) {
        this.door = door;
        this.sites = sites;
        this.facades = facades;
        this.crews = crews;
        this.signedIn = signedIn;
    }

    /** @param inWork whether crews work by its published plan */
    record FolderAnswer(long folder, String name, Instant importedAt, boolean inWork) {}

    /** @param address its lines, the first one uppermost; none: not told */
    record SiteAnswer(
            String site,
            String name,
            double latitude,
            double longitude,
            String timeZone,
            String terrain,
            List<String> address) {
        static SiteAnswer of(Site site) {
            return new SiteAnswer(
                    site.id().value(),
                    site.name(),
                    site.place().latitude(),
                    site.place().longitude(),
                    site.zone().getId(),
                    site.terrain().code(),
                    site.address().lines());
        }
    }

    /** @param azimuthDeg the outward normal, degrees clockwise from true north */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record FacadeAnswer(
            String site,
            String facade,
            double azimuthDeg,
            @Nullable LocalDate handoverDue) {
        static FacadeAnswer of(Facade facade) {
            return new FacadeAnswer(
                    facade.id().site().value(), facade.id().facade(), facade.azimuthDeg(), facade.handoverDue());
        }
    }

    /**
     * @param methods those that it is trained for; none named: all
     * @param people how many they are, where that is told
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record CrewAnswer(
            String crew,
            String trade,
            List<String> methods,
            String timeZone,
            @Nullable Integer people) {
        static CrewAnswer of(Crew crew) {
            return new CrewAnswer(
                    crew.id().value(),
                    crew.trade().code(),
                    crew.methods().stream().map(Method::code).sorted().toList(),
                    crew.zone().getId(),
                    crew.people());
        }
    }

    @GetMapping("/api/v1/folders")
    ResponseEntity<Listing<FolderAnswer>> folders(
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        return Part.of(limit, cursor)
                .of(door.all(who), one -> "%019d".formatted(one.id().value()), this::folder);
    }

    private FolderAnswer folder(StoredFolder one) {
        return new FolderAnswer(one.id().value(), one.name(), one.importedAt(), door.inWork(one.id()));
    }

    @GetMapping("/api/v1/folders/{folder}/sites")
    ResponseEntity<Listing<SiteAnswer>> sites(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var id = door.open(who, folder);
        return Part.of(limit, cursor)
                .of(sites.within(id, who.reach()), one -> one.id().value(), SiteAnswer::of);
    }

    @GetMapping("/api/v1/folders/{folder}/facades")
    ResponseEntity<Listing<FacadeAnswer>> facades(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var id = door.open(who, folder);
        return Part.of(limit, cursor)
                .of(facades.within(id, who.reach()), one -> one.id().toString(), FacadeAnswer::of);
    }

    @GetMapping("/api/v1/folders/{folder}/crews")
    ResponseEntity<Listing<CrewAnswer>> crews(
            @PathVariable String folder,
            @RequestParam(required = false) @Nullable String limit,
            @RequestParam(required = false) @Nullable String cursor) {
        var who = signedIn.person();
        var id = door.open(who, folder);
        who.demand(Operation.SEE_CREWS);
        return Part.of(limit, cursor).of(crews.of(id), one -> one.id().value(), CrewAnswer::of);
    }
}
