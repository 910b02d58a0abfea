package drylap.ui.drawn;

import drylap.speech.Speech;
import drylap.takeoff.DayList;
import drylap.takeoff.SiteList;
import drylap.takeoff.Sums;
import drylap.takeoff.Supplies;
import drylap.takeoff.TakeOff;
import java.util.List;
import java.util.Optional;

/**
 * A take-off as a scheduler reads it.
 *
 * @param title of what it is
 * @param parts what the shares are of: crews, or walls
 * @param supplies of all of it
 */
public record TakeOffSheet(String title, String parts, List<Share> shares, Supplies supplies) {
    /** What one crew or one wall takes of it. */
    public record Share(String name, Sums sums) {}

    public TakeOffSheet {
        shares = List.copyOf(shares);
    }

    /**
     * Nothing where the plan has no installs on that day, or the folder not that site.
     *
     * @throws IllegalArgumentException where the plan visits what the folder has not
     */
    public static Optional<TakeOffSheet> of(Speech say, FolderShown shown, TakeOffChoice choice) {
        if (!there(shown, choice)) return Optional.empty();
        String title = choice.words(say, shown);
        return switch (choice) {
            case TakeOffChoice.OfDay(var date) ->
                shown.plan()
                        .map(plan -> TakeOff.ofDates(shown.folder(), plan, date::equals))
                        .flatMap(days -> days.stream().findFirst())
                        .map(day -> ofDay(say, title, day));
            case TakeOffChoice.OfSite(var site, var extent) ->
                Optional.of(ofSite(say, title, TakeOff.ofSite(shown.folder(), site, extent)));
        };
    }

    private static boolean there(FolderShown shown, TakeOffChoice choice) {
        return !(choice instanceof TakeOffChoice.OfSite(var id, var _))
                || shown.folder().sites().stream().anyMatch(site -> site.id().equals(id));
    }

    private static TakeOffSheet ofDay(Speech say, String title, DayList day) {
        return new TakeOffSheet(
                title,
                say.it("Crew"),
                day.byCrew().entrySet().stream()
                        .map(crew -> new Share(crew.getKey().value(), crew.getValue()))
                        .toList(),
                day.supplies());
    }

    private static TakeOffSheet ofSite(Speech say, String title, SiteList site) {
        return new TakeOffSheet(
                title,
                say.it("Wall"),
                site.byWall().entrySet().stream()
                        .map(wall -> new Share(wall.getKey().facade(), wall.getValue()))
                        .toList(),
                site.supplies());
    }
}
