package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.sites.Opening;
import drylap.sites.OpeningNote;
import drylap.speech.Saying;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a window schedule is to make of a site's openings, as someone saw it.
 *
 * @param file its name, for the history
 * @param added new openings, in the order in which the folder is to list them
 * @param was how the changed openings stood when the person looked, in the order of {@code changed}
 * @param agreed those of them at which work had begun, and which change all the same
 * @param notes what the schedule says of each opening that it names
 */
public record ScheduleTaking(
        SiteId site,
        String file,
        List<Opening> added,
        List<Opening> was,
        List<Opening> changed,
        List<OpeningId> agreed,
        Map<OpeningId, OpeningNote> notes) {
    public ScheduleTaking {
        added = List.copyOf(added);
        was = List.copyOf(was);
        changed = List.copyOf(changed);
        agreed = List.copyOf(agreed);
        notes = Map.copyOf(notes);
        if (was.size() != changed.size()) throw new IllegalArgumentException("each change needs what was before it");
    }

    /** What is wrong with it beyond what the database refuses. */
    Optional<Saying> problem() {
        return java.util.stream.Stream.of(added, changed)
                .flatMap(List::stream)
                .filter(opening -> !opening.facade().site().equals(site))
                .findFirst()
                .map(opening -> Saying.of(
                        "opening {0} is not of site {1}; accepted: openings of that site", opening.id(), site));
    }
}
