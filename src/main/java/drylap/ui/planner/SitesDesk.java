package drylap.ui.planner;

import drylap.handoff.Custodies;
import drylap.progress.OpeningStates;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SitesSheet;
import java.time.Clock;
import org.springframework.stereotype.Service;

/** How the sites of a folder stand, as far as a person may see them. */
@Service
final class SitesDesk {
    private final OpeningStates states;
    private final Custodies custodies;
    private final Clock clock;

    SitesDesk(OpeningStates states, Custodies custodies, Clock clock) {
        this.states = states;
        this.custodies = custodies;
        this.clock = clock;
    }

    SitesSheet sheet(Person who, FolderShown shown) {
        who.demand(Operation.SEE_WALLS);
        var folder = shown.stored().id();
        var say = new Speech(who.reading());
        return SitesSheet.of(say, shown, states.of(who, folder), custodies.of(folder, who.reach()), clock.instant());
    }
}
