package drylap.planning;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.speech.Part;
import drylap.speech.Saying;
import drylap.weather.Forecast;
import drylap.weather.ShutCause;
import drylap.weather.ShutCauses;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Why a wall is shut where a visit stood: the cause, the wall, and since when. */
public final class WhyShut {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final JobFolder folder;
    private final Instant from;
    private final Instant until;
    private final Map<SiteId, Site> sites;
    private final Map<FacadeId, Facade> facades;
    private final Map<FacadeId, ShutCauses> known = new HashMap<>();

    /** Over the stretch in which the visits lie that are asked about. */
    public WhyShut(JobFolder folder, Instant from, Instant until) {
        this.folder = folder;
        this.from = from;
        this.until = until;
        sites = folder.sites().stream().collect(Collectors.toMap(Site::id, one -> one));
        facades = folder.facades().stream().collect(Collectors.toMap(Facade::id, one -> one));
    }

    /**
     * Such as "rain on the west wall from 11:00", by the site's clock; empty where nothing that is forecast shuts it.
     *
     * @param open the windows of the wall for the visit's task
     */
    public Optional<Saying> saying(Visit before, List<TimeWindow> open) {
        Site site = sites.get(before.facade().site());
        Facade facade = facades.get(before.facade());
        if (site == null || facade == null) return Optional.empty();
        ShutCauses causes = known.computeIfAbsent(facade.id(), _ -> causes(site, facade));
        Instant shut = firstShut(before, open);
        Set<ShutCause> at = at(causes, before, shut);
        if (at.isEmpty()) return Optional.empty();
        Instant since = begins(
                since(open, shut), shut, minute -> at(causes, before, minute).containsAll(at));
        return causes(at)
                .map(why -> Saying.of(
                        "{0} on the {1} wall from {2}", why, facade.id().facade(), moment(since, before, site.zone())));
    }

    private static Optional<Saying> causes(Set<ShutCause> at) {
        return at.stream()
                .map(cause -> Saying.of(cause.words()))
                .reduce((before, next) -> Saying.of("{0} and {1}", before, next));
    }

    private ShutCauses causes(Site site, Facade facade) {
        Forecast forecast = folder.forecast(site.id());
        return ShutCauses.of(site, facade, forecast, folder.rules().at(site.id()), span());
    }

    /** A visit lies in it where this is asked, so it is not empty. */
    private TimeWindow span() {
        return new TimeWindow(from, until);
    }

    /** While it rains, what further rain will ask says no more. */
    private static Set<ShutCause> at(ShutCauses causes, Visit before, Instant minute) {
        Set<ShutCause> at = causes.within(before.task(), new TimeWindow(minute, minute.plus(MINUTE)));
        if (at.contains(ShutCause.RAIN)) at.remove(ShutCause.SKIN);
        return at;
    }

    /** The first moment of the visit at which the wall is shut. */
    private static Instant firstShut(Visit before, List<TimeWindow> open) {
        return open.stream()
                .filter(when ->
                        !before.start().isBefore(when.from()) && before.start().isBefore(when.until()))
                .map(TimeWindow::until)
                .findFirst()
                .orElse(before.start());
    }

    /** When the wall was last open before then; the stretch's start where it never was. */
    private Instant since(List<TimeWindow> open, Instant shut) {
        return open.stream()
                .map(TimeWindow::until)
                .filter(end -> !end.isAfter(shut))
                .max(Comparator.naturalOrder())
                .orElse(from);
    }

    /** The minute in which the causes begin that hold at the later one. */
    private static Instant begins(Instant earlier, Instant later, Predicate<Instant> holds) {
        if (!earlier.isBefore(later)) return later;
        if (holds.test(earlier)) return earlier;
        Instant not = earlier;
        Instant so = later;
        while (Duration.between(not, so).compareTo(MINUTE) > 0) {
            Instant middle = not.plus(Duration.between(not, so).dividedBy(2)).truncatedTo(ChronoUnit.MINUTES);
            if (!middle.isAfter(not)) break;
            if (holds.test(middle)) so = middle;
            else not = middle;
        }
        return so;
    }

    private static Object moment(Instant at, Visit before, ZoneId zone) {
        var there = at.atZone(zone);
        boolean sameDay = there.toLocalDate().equals(before.start().atZone(zone).toLocalDate());
        return sameDay ? there.format(CLOCK) : new Part.When(there);
    }
}
