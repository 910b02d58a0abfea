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

        Wall.Glyph glyph(Speech say) {
            return WallPresenter.glyph(say, state, custody);
        }

        boolean exposed() {
            return glyph(Speech.ENGLISH).water();
        }

        boolean finished() {
            return state.list().finished(state.done(), Trade.SIDING);
        }
    }

    public static SitesSheet of(
            Speech say, FolderShown shown, List<OpeningState> states, Map<OpeningId, Custody> custodies, Instant now) {
        Map<FacadeId, List<Standing>> byFacade = states.stream()
                .map(state -> new Standing(
                        state, custodies.getOrDefault(state.opening().id(), Custody.UNRELEASED)))
                .collect(Collectors.groupingBy(one -> one.state().opening().facade()));
        return new SitesSheet(shown.folder().sites().stream()
                .map(site -> site(say, shown, site, byFacade, now))
                .toList());
    }

    private static OneSite site(
            Speech say, FolderShown shown, Site site, Map<FacadeId, List<Standing>> byFacade, Instant now) {
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
                rain(say, shown, site, now),
                counts(say, all),
                walls.stream()
                        .map(facade -> face(say, shown, facade, byFacade.getOrDefault(facade.id(), List.of())))
                        .toList());
    }

    private static Face face(Speech say, FolderShown shown, Facade facade, List<Standing> all) {
        String heading = say.it(Words.heading(facade));
        return new Face(
                facade.id(),
                "%s, %s".formatted(facade.id().facade(), heading),
                counts(say, all),
                exposed(all),
                first(all),
                WallPresenter.wall(
                        shown.title(facade.id()),
                        heading,
                        all,
                        one -> one.state().opening().level(),
                        one -> one.glyph(say)));
    }

    private static OpeningId first(List<Standing> all) {
        Optional<Standing> open = all.stream().filter(Standing::exposed).findFirst();
        return open.orElse(all.getFirst()).state().opening().id();
    }

    private static int exposed(List<Standing> all) {
        return (int) all.stream().filter(Standing::exposed).count();
    }

    private static String counts(Speech say, List<Standing> all) {
        return say.it(
                "{0} open to rain now, apron ready at {1} of {2}, {3} released, {4} returned, {5} finished",
                exposed(all),
                all.stream().filter(one -> one.hand().letGo()).count(),
                all.size(),
                all.stream().filter(one -> one.hand() == Hand.RELEASED).count(),
                all.stream().filter(one -> one.hand() == Hand.RETURNED).count(),
                all.stream().filter(Standing::finished).count());
    }

    private static String rain(Speech say, FolderShown shown, Site site, Instant now) {
        var weather = shown.weather(site.id());
        var end = weather.forecastEnd();
        if (!end.isAfter(now)) return say.it("no forecast from now on");
        return weather.nextRain(now)
                .map(rain -> say.it("next rain {0}", say.moment(rain.from(), site.zone())))
                .orElseGet(() -> say.it("no rain forecast before {0}", say.moment(end, site.zone())));
    }
}
