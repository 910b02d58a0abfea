package drylap.api.v1;

import drylap.api.NotFound;
import drylap.handoff.Custodies;
import drylap.handoff.Releases;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.sites.Openings;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Component;

/** Openings for whoever may see them, and held for whoever changes one. */
@Component
final class OpeningDoor {
    private final FolderDoor folders;
    private final Openings openings;
    private final OpeningStates states;
    private final Custodies custodies;
    private final Releases releases;

    OpeningDoor(FolderDoor folders, Openings openings, OpeningStates states, Custodies custodies, Releases releases) {
        this.folders = folders;
        this.openings = openings;
        this.states = states;
        this.custodies = custodies;
        this.releases = releases;
    }

    /** An opening as somebody sees it. */
    record Seen(Person who, OpeningState state, OpeningAnswerV1 answer) {
        FolderId folder() {
            return state.folder();
        }

        OpeningId id() {
            return state.opening().id();
        }
    }

    /** @throws NotFound where it is not theirs, or is not there */
    Seen see(Person who, String folder, String opening) {
        if (opening.isBlank()) throw new NotFound();
        var id = folders.open(who, folder);
        try {
            var state = states.of(who, id, new OpeningId(opening));
            return new Seen(who, state, answer(who, state));
        } catch (NotAllowed refusal) {
            throw new NotFound();
        }
    }

    /** The same for a change, of which the request says upon what it was decided. */
    Seen agreed(Person who, String folder, String opening, HttpServletRequest request) {
        var seen = see(who, folder, opening);
        Tags.demand(request, seen.answer());
        return seen;
    }

    /** And nobody else marks it, hands it over or changes it until the transaction ends. */
    Seen hold(Person who, String folder, String opening, HttpServletRequest request) {
        var before = see(who, folder, opening);
        openings.locked(before.folder(), List.of(before.id()));
        return agreed(who, folder, opening, request);
    }

    private OpeningAnswerV1 answer(Person who, OpeningState state) {
        var folder = state.folder();
        var id = state.opening().id();
        return OpeningAnswerV1.of(state, custodies.of(folder, id), releases.holdPoints(who, folder, id));
    }
}
