package drylap.ui.planner;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.CrewDays;
import drylap.planning.CrewDraft;
import drylap.planning.CrewsByHand;
import drylap.planning.HandResult;
import drylap.planning.SiteDraft;
import drylap.planning.SitesByHand;
import drylap.planning.WallDraft;
import drylap.security.SignedIn;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** What the forms for sites, walls and crews of one's own ask for. */
@Service
final class HandDesk {
    private final SitesByHand sites;
    private final CrewsByHand crews;
    private final SignedIn signedIn;
    private final Clock clock;

    HandDesk(SitesByHand sites, CrewsByHand crews, SignedIn signedIn, Clock clock) {
        this.sites = sites;
        this.crews = crews;
        this.signedIn = signedIn;
        this.clock = clock;
    }

    LocalDate today(ZoneId zone) {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    HandResult add(@Nullable FolderId folder, SiteDraft site, List<WallDraft> walls) {
        return sites.add(signedIn.person(), folder, site, walls);
    }

    HandResult change(FolderId folder, SiteId id, SiteDraft site) {
        return sites.change(signedIn.person(), folder, id, site);
    }

    HandResult remove(FolderId folder, SiteId id) {
        return sites.remove(signedIn.person(), folder, id);
    }

    HandResult addWall(FolderId folder, SiteId site, WallDraft wall) {
        return sites.addWalls(signedIn.person(), folder, site, List.of(wall));
    }

    HandResult turn(FolderId folder, FacadeId wall, double azimuthDeg) {
        return sites.turn(signedIn.person(), folder, wall, azimuthDeg);
    }

    HandResult remove(FolderId folder, FacadeId wall) {
        return sites.removeWall(signedIn.person(), folder, wall);
    }

    HandResult add(FolderId folder, CrewDraft crew) {
        return crews.add(signedIn.person(), folder, crew);
    }

    HandResult setDays(FolderId folder, CrewId crew, CrewDays days) {
        return crews.setDays(signedIn.person(), folder, crew, days);
    }

    HandResult setPeople(FolderId folder, CrewId crew, @Nullable Integer people) {
        return crews.setPeople(signedIn.person(), folder, crew, people);
    }

    HandResult remove(FolderId folder, CrewId crew) {
        return crews.remove(signedIn.person(), folder, crew);
    }
}
