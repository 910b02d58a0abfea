package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.raincall.Act;
import drylap.raincall.RainCall;
import drylap.raincall.RainCalls;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.ui.drawn.RainCallSheet.Course;
import drylap.ui.drawn.RainCallSheet.Left;
import drylap.ui.drawn.RainCallSheet.Stop;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Fills the rain call of a site. */
public final class RainCallPresenter {
    /** Less is not told: the reckoning promises no litres. */
    private static final double LEAST_LITRES = 0.05;

    private static final int NO_RAIN = -1;

    private final FolderShown shown;
    private final Site site;
    private final RainCalls.Call call;
    private final @Nullable Duration seen;

    private RainCallPresenter(FolderShown shown, Site site, RainCalls.Call call, @Nullable Duration seen) {
        this.shown = shown;
        this.site = site;
        this.call = call;
        this.seen = seen;
    }

    /**
     * @param standingAt where the crew is now
     * @param seenAt when the crew itself sees the rain come; absent: as the forecast has it
     */
    public static RainCallSheet sheet(
            FolderShown shown, SiteId site, Instant now, @Nullable OpeningId standingAt, @Nullable Instant seenAt) {
        var seen = Optional.ofNullable(seenAt)
                .map(at -> at.isBefore(now) ? Duration.ZERO : Duration.between(now, at))
                .orElse(null);
        var call = RainCalls.at(shown.folder(), site, now, Optional.ofNullable(standingAt), Optional.ofNullable(seen));
        return new RainCallPresenter(shown, shown.site(site), call, seen).sheet();
    }

    private RainCallSheet sheet() {
        boolean none = call.open().isEmpty();
        return new RainCallSheet(
                "Rain call, " + site.name(),
                rain(),
                minutes(),
                none ? "Nothing stands open at %s: there is nothing to close or cover.".formatted(site.name()) : "",
                none ? "" : water(),
                call.order().stops().stream().map(this::stop).toList(),
                call.order().left().stream().map(this::left).toList(),
                courses(),
                none ? List.of() : remarks());
    }

    private int minutes() {
        if (seen != null) return ceil(seen);
        return call.untilRain().map(RainCallPresenter::ceil).orElse(NO_RAIN);
    }

    private static int ceil(Duration time) {
        return (int) Math.ceilDiv(time.toSeconds(), 60);
    }

    private String rain() {
        String forecast = call.rainAt()
                .map(at -> "rain at " + Words.moment(at, site.zone()))
                .orElse("no rain within 24 hours");
        if (seen != null)
            return "%s, as you see it; the forecast has %s"
                    .formatted(in(minutes(), call.now().plus(seen)), forecast);
        return call.rainAt()
                .map(at -> in(minutes(), at) + ", by the forecast")
                .orElse("No rain within 24 hours, by the forecast");
    }

    private String in(int minutes, Instant at) {
        if (minutes == 0) return "Rain now";
        String time = minutes < 120 ? minutes + " min" : "%d h %d min".formatted(minutes / 60, minutes % 60);
        return "Rain in %s, at %s".formatted(time, Words.clock(at, site.zone()));
    }

    private String water() {
        return "Expected in at all of them: %s in this order, %s if nothing is done."
                .formatted(litres(call.order().litres()), litres(call.order().litresIfNothingIsDone()));
    }

    private Stop stop(RainCall.Stop stop) {
        var opening = shown.opening(stop.opening());
        return new Stop(
                opening.id().value(),
                place(opening),
                stop.act() == Act.CLOSE ? "Close" : "Cover",
                "%s to %s, %d min".formatted(clock(stop.from()), clock(stop.until()), stop.until() - stop.from()),
                "%s expected in, %s if left open".formatted(litres(stop.litres()), ifLeft(stop.opening())),
                WallPresenter.glyph(opening));
    }

    private Left left(OpeningId id) {
        return new Left(id.value(), place(shown.opening(id)), ifLeft(id) + " expected in");
    }

    private String ifLeft(OpeningId id) {
        return litres(Objects.requireNonNull(call.order().litresIfLeft().get(id)));
    }

    private String clock(int minute) {
        return Words.clock(call.now().plus(Duration.ofMinutes(minute)), site.zone());
    }

    private static String place(Opening opening) {
        return "%s, level %d".formatted(opening.facade().facade(), opening.level());
    }

    private static String litres(double litres) {
        return litres < LEAST_LITRES ? "hardly any water" : String.format(Locale.ENGLISH, "about %.1f L", litres);
    }

    private List<Course> courses() {
        return shown.folder().openings().stream()
                .filter(one -> one.facade().site().equals(site.id()))
                .sorted(Comparator.comparing((Opening one) -> one.facade().facade())
                        .thenComparing(Opening::level)
                        .thenComparing(one -> one.id().value()))
                .collect(Collectors.toMap(
                        RainCallPresenter::place, one -> one, (first, _) -> first, java.util.LinkedHashMap::new))
                .entrySet()
                .stream()
                .map(course -> new Course(course.getValue().id().value(), course.getKey()))
                .toList();
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (call.changesIfEarlier())
            remarks.add("Should the rain come half an hour sooner: " + acts(call.ifEarlier()) + ".");
        if (!call.order().exact())
            remarks.add("More than %d openings stand open: a good order, not proven to be the best."
                    .formatted(RainCall.EXACT_UP_TO));
        var end = shown.weather(site.id()).forecastEnd();
        if (end.isBefore(call.until()))
            remarks.add(
                    end.isBefore(call.now())
                            ? "There is no forecast of this site for now."
                            : "The forecast ends at %s; what comes later is not known."
                                    .formatted(Words.moment(end, site.zone())));
        remarks.add(
                "Reckoned for one crew that does one after the other. Litres rank the openings and promise nothing.");
        return List.copyOf(remarks);
    }

    private static String acts(RainCall.Order order) {
        return order.stops().isEmpty()
                ? "there is no time for any of them"
                : order.stops().stream()
                        .map(stop -> stop.act().words() + " " + stop.opening())
                        .collect(Collectors.joining(", "));
    }
}
