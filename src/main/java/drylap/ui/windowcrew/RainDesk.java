package drylap.ui.windowcrew;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.RainCallPresenter;
import drylap.ui.drawn.RainCallSheet;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The rain call of the folder in work, for whoever may call rain at a site. */
@Component
class RainDesk {
    private final CrewDesk desk;
    private final Clock clock;

    RainDesk(CrewDesk desk, Clock clock) {
        this.desk = desk;
        this.clock = clock;
    }

    Optional<FolderShown> shown(Person who) {
        who.demand(Operation.CALL_RAIN);
        return desk.shown(who);
    }

    /** Those where something stands open come first. */
    List<Site> sites(Person who, FolderShown shown) {
        return shown.folder().sites().stream()
                .filter(site -> who.may(Operation.CALL_RAIN, site.id()))
                .sorted(java.util.Comparator.comparing((Site site) -> !open(shown, site.id())))
                .toList();
    }

    private static boolean open(FolderShown shown, SiteId site) {
        return shown.folder().openings().stream()
                .anyMatch(one ->
                        one.facade().site().equals(site) && one.stepList().open(one.done()));
    }

    RainCallSheet sheet(
            Person who, FolderShown shown, SiteId site, @Nullable OpeningId standingAt, @Nullable Instant seenAt) {
        who.demand(Operation.CALL_RAIN, site);
        return RainCallPresenter.sheet(new Speech(who.reading()), shown, site, clock.instant(), standingAt, seenAt);
    }

    Instant in(int minutes) {
        return clock.instant().plus(Duration.ofMinutes(minutes));
    }
}
