package drylap.ui.drawn;

import drylap.handoff.Custody;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.progress.OpeningState;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How each site and each of its facades stands, for whoever plans. */
public record SitesSheet(List<OneSite> sites) {
    /**
     * @param address in one line; empty where it is not told
     * @param rain when it is next to rain there, as far as the forecast goes
     */
    public record OneSite(SiteId id, String name, String address, String rain, String counts, List<Face> faces) {}

    /**
     * A facade.
     *
     * @param exposed how many openings stand open to rain now
     * @param first an opening to come in by
     */
    public record Face(FacadeId id, String title, String counts, int exposed, OpeningId first, Wall wall) {}

    private record Standing(OpeningState state, Custody custody) {
        Hand hand() {
            return Hand.of(state, custody);
        }

        Wall.Glyph glyph() {
            return WallPresenter.glyph(Speech.ENGLISH, state, custody);
        }

        boolean finished() {
            return state.list().finished(state.done(), Trade.SIDING);
        }
    }

    public static SitesSheet of(
            FolderShown shown, List<OpeningState> states, Map<OpeningId, Custody> custodies, Instant now) {
        Map<FacadeId, List<Standing>> byFacade = states.stream()
                .map(state -> new Standing(
                        state, custodies.getOrDefault(state.opening().id(), Custody.UNRELEASED)))
                .collect(Collectors.groupingBy(one -> one.state().opening().facade()));
        return new SitesSheet(shown.folder().sites().stream()
                .map(site -> site(shown, site, byFacade, now))
                .toList());
    }

    private static OneSite site(FolderShown shown, Site site, Map<FacadeId, List<Standing>> byFacade, Instant now) {
        List<Facade> walls = shown.folder().facades().stream()
                .filter(facade -> facade.id().site().equals(site.id()) && byFacade.containsKey(facade.id()))
                .toList();
        List<Standing> all = walls.stream()
                .flatMap(facade -> byFacade.getOrDefault(facade.id(), List.of()).stream())
                .toList();
        return new OneSite(
                site.id(),
                site.name(),
                site.address().inOneLine(),
                rain(shown, site, now),
                counts(all),
                walls.stream()
                        .map(facade -> face(shown, facade, byFacade.getOrDefault(facade.id(), List.of())))
                        .toList());
    }

    private static Face face(FolderShown shown, Facade facade, List<Standing> all) {
        String heading = Words.heading(facade).words();
        return new Face(
                facade.id(),
                "%s, %s".formatted(facade.id().facade(), heading),
                counts(all),
                exposed(all),
                first(all),
                WallPresenter.wall(
                        shown.title(facade.id()),
                        heading,
                        all,
                        one -> one.state().opening().level(),
                        Standing::glyph));
    }

    private static OpeningId first(List<Standing> all) {
        Optional<Standing> open =
                all.stream().filter(one -> one.glyph().water()).findFirst();
        return open.orElse(all.getFirst()).state().opening().id();
    }

    private static int exposed(List<Standing> all) {
        return (int) all.stream().filter(one -> one.glyph().water()).count();
    }

    private static String counts(List<Standing> all) {
        return "%d open to rain now, apron ready at %d of %d, %d released, %d returned, %d finished"
                .formatted(
                        exposed(all),
                        all.stream().filter(one -> one.hand().letGo()).count(),
                        all.size(),
                        all.stream().filter(one -> one.hand() == Hand.RELEASED).count(),
                        all.stream().filter(one -> one.hand() == Hand.RETURNED).count(),
                        all.stream().filter(Standing::finished).count());
    }

    private static String rain(FolderShown shown, Site site, Instant now) {
        var weather = shown.weather(site.id());
        var end = weather.forecastEnd();
        if (!end.isAfter(now)) return "no forecast from now on";
        return weather.nextRain(now)
                .map(rain -> "next rain " + Words.moment(rain.from(), site.zone()))
                .orElseGet(() -> "no rain forecast before " + Words.moment(end, site.zone()));
    }
}
