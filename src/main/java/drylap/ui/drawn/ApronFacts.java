package drylap.ui.drawn;

import drylap.crews.Crew;
import drylap.handoff.Custody;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.planning.Visit;
import drylap.progress.OpeningState;
import drylap.sites.Facade;
import drylap.sites.Site;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the screen of aprons is made from.
 *
 * @param visits of the published plan
 * @param states of the openings that the person may see, in the folder's order
 * @param custodies of those that were ever released
 */
public record ApronFacts(
        FolderId id,
        List<Site> sites,
        List<Facade> facades,
        List<Crew> crews,
        List<Visit> visits,
        List<OpeningState> states,
        Map<OpeningId, Custody> custodies) {
    public ApronFacts {
        sites = List.copyOf(sites);
        facades = List.copyOf(facades);
        crews = List.copyOf(crews);
        visits = List.copyOf(visits);
        states = List.copyOf(states);
        custodies = Map.copyOf(custodies);
    }

    public Optional<OpeningState> state(OpeningId opening) {
        return states.stream()
                .filter(state -> state.opening().id().equals(opening))
                .findFirst();
    }

    /** The trade of a crew, where the folder has the crew. */
    public Optional<Trade> trade(@Nullable CrewId crew) {
        return crews.stream()
                .filter(one -> one.id().equals(crew))
                .map(Crew::trade)
                .findFirst();
    }

    Custody custody(OpeningState state) {
        return custodies.getOrDefault(state.opening().id(), Custody.UNRELEASED);
    }

    Hand hand(OpeningState state) {
        return Hand.of(state, custody(state));
    }

    Site site(OpeningState state) {
        return sites.stream()
                .filter(site -> site.id().equals(state.site()))
                .findFirst()
                .orElseThrow();
    }

    Facade facade(OpeningState state) {
        return facades.stream()
                .filter(facade -> facade.id().equals(state.opening().facade()))
                .findFirst()
                .orElseThrow();
    }

    String title(OpeningState state) {
        return "%s, %s".formatted(site(state).name(), state.opening().facade().facade());
    }
}
