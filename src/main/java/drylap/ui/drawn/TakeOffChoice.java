package drylap.ui.drawn;

import drylap.kernel.Coded;
import drylap.kernel.SiteId;
import drylap.planning.Plan;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.takeoff.Extent;
import drylap.takeoff.TakeOff;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Of what someone wants the take-off. */
public sealed interface TakeOffChoice {
    /** A day of the plan, of all crews. */
    record OfDay(LocalDate date) implements TakeOffChoice {}

    record OfSite(SiteId site, Extent extent) implements TakeOffChoice {}

    /** All that there is: days of the plan on which something is left to put on, then sites, each in both ways. */
    static List<TakeOffChoice> all(FolderShown shown) {
        List<TakeOffChoice> all = new ArrayList<>();
        shown.plan().ifPresent(plan -> days(shown, plan).forEach(all::add));
        for (Site site : shown.folder().sites())
            for (Extent extent : Extent.values()) all.add(new OfSite(site.id(), extent));
        return all;
    }

    private static List<OfDay> days(FolderShown shown, Plan plan) {
        return TakeOff.dates(shown.folder(), plan).stream().map(OfDay::new).toList();
    }

    /** As it stands in an address; nothing where that names none. */
    static Optional<TakeOffChoice> of(Map<String, List<String>> parameters) {
        Optional<String> site = first(parameters, "site");
        if (site.isPresent())
            return Optional.of(new OfSite(
                    new SiteId(site.get()),
                    first(parameters, "extent")
                            .flatMap(code -> Coded.parse(Extent.class, code))
                            .orElse(Extent.LEFT)));
        return first(parameters, "date").flatMap(TakeOffChoice::day);
    }

    private static Optional<TakeOffChoice> day(String date) {
        try {
            return Optional.of(new OfDay(LocalDate.parse(date)));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    private static Optional<String> first(Map<String, List<String>> parameters, String name) {
        return parameters.getOrDefault(name, List.of()).stream()
                .filter(value -> !value.isBlank())
                .findFirst();
    }

    default Map<String, String> parameters() {
        return switch (this) {
            case OfDay(var date) -> Map.of("date", date.toString());
            case OfSite(var site, var extent) -> Map.of("site", site.value(), "extent", extent.code());
        };
    }

    default String words(Speech say, FolderShown shown) {
        return switch (this) {
            case OfDay(var date) -> say.it("{0}, all crews", say.day(date));
            case OfSite(var site, var extent) ->
                switch (extent) {
                    case LEFT ->
                        say.it("{0}, what is left to put on", shown.site(site).name());
                    case WHOLE -> say.it("{0}, whole walls", shown.site(site).name());
                };
        };
    }
}
