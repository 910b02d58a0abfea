package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.raincall.Act;
import drylap.raincall.RainCall;
import drylap.raincall.RainCalls;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.RainCallSheet.Course;
import drylap.ui.drawn.RainCallSheet.Left;
import drylap.ui.drawn.RainCallSheet.Stop;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Fills the rain call of a site. */
public final class RainCallPresenter {
    /** Less is not told: the reckoning promises no litres. */
    private static final double LEAST_LITRES = 0.05;

    private static final int NO_RAIN = -1;

    private final Speech say;
    private final FolderShown shown;
    private final Site site;
    private final RainCalls.Call call;
    private final @Nullable Duration seen;

    private RainCallPresenter(Speech say, FolderShown shown, Site site, RainCalls.Call call, @Nullable Duration seen) {
        this.say = say;
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
            Speech say,
            FolderShown shown,
            SiteId site,
            Instant now,
            @Nullable OpeningId standingAt,
            @Nullable Instant seenAt) {
        var seen = Optional.ofNullable(seenAt)
                .map(at -> at.isBefore(now) ? Duration.ZERO : Duration.between(now, at))
                .orElse(null);
        var call = RainCalls.at(shown.folder(), site, now, Optional.ofNullable(standingAt), Optional.ofNullable(seen));
        return new RainCallPresenter(say, shown, shown.site(site), call, seen).sheet();
    }

    private RainCallSheet sheet() {
        boolean none = call.open().isEmpty();
        return new RainCallSheet(
                say.it("Rain call, {0}", site.name()),
                rain(),
                minutes(),
                none ? say.it("Nothing stands open at {0}: there is nothing to close or cover.", site.name()) : "",
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
        var forecast = call.rainAt()
                .map(at -> Saying.of("rain at {0}", say.moment(at, site.zone())))
                .orElse(Saying.of("no rain within 24 hours"));
        if (seen != null)
            return say.it(
                    "{0}, as you see it; the forecast has {1}",
                    in(minutes(), call.now().plus(seen)), forecast);
        return call.rainAt()
                .map(at -> say.it("{0}, by the forecast", in(minutes(), at)))
                .orElseGet(() -> say.it("No rain within 24 hours, by the forecast"));
    }

    private String in(int minutes, Instant at) {
        if (minutes == 0) return say.it("Rain now");
        String time = minutes < 120 ? minutes + " min" : "%d h %d min".formatted(minutes / 60, minutes % 60);
        return say.it("Rain in {0}, at {1}", time, say.clock(at, site.zone()));
    }

    private String water() {
        return say.it(
                "Expected in at all of them: {0} in this order, {1} if nothing is done.",
                litres(call.order().litres()), litres(call.order().litresIfNothingIsDone()));
    }

    private Stop stop(RainCall.Stop stop) {
        var opening = shown.opening(stop.opening());
        return new Stop(
                opening.id().value(),
                place(opening),
                stop.act() == Act.CLOSE,
                say.it(stop.act() == Act.CLOSE ? "Close" : "Cover"),
                say.it("{0} to {1}, {2} min", clock(stop.from()), clock(stop.until()), stop.until() - stop.from()),
                say.it("{0} expected in, {1} if left open", litres(stop.litres()), ifLeft(stop.opening())),
                WallPresenter.glyph(say, opening));
    }

    private Left left(OpeningId id) {
        return new Left(id.value(), place(shown.opening(id)), say.it("{0} expected in", ifLeft(id)));
    }

    private String ifLeft(OpeningId id) {
        return litres(Objects.requireNonNull(call.order().litresIfLeft().get(id)));
    }

    private String clock(int minute) {
        return say.clock(call.now().plus(Duration.ofMinutes(minute)), site.zone());
    }

    private String place(Opening opening) {
        return say.it("{0}, level {1}", opening.facade().facade(), opening.level());
    }

    private String litres(double litres) {
        return litres < LEAST_LITRES ? say.it("hardly any water") : say.it("about {0} L", say.number(litres, 1));
    }

    private List<Course> courses() {
        return shown.folder().openings().stream()
                .filter(one -> one.facade().site().equals(site.id()))
                .sorted(Comparator.comparing((Opening one) -> one.facade().facade())
                        .thenComparing(Opening::level)
                        .thenComparing(one -> one.id().value()))
                .collect(Collectors.toMap(this::place, one -> one, (first, _) -> first, java.util.LinkedHashMap::new))
                .entrySet()
                .stream()
                .map(course -> new Course(course.getValue().id().value(), course.getKey()))
                .toList();
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (call.changesIfEarlier())
            remarks.add(say.it("Should the rain come half an hour sooner: {0}.", acts(call.ifEarlier())));
        if (!call.order().exact())
            remarks.add(say.it(
                    "More than {0} openings stand open: a good order, not proven to be the best.",
                    RainCall.EXACT_UP_TO));
        var end = shown.weather(site.id()).forecastEnd();
        if (end.isBefore(call.until()))
            remarks.add(
                    end.isBefore(call.now())
                            ? say.it("There is no forecast of this site for now.")
                            : say.it(
                                    "The forecast ends at {0}; what comes later is not known.",
                                    say.moment(end, site.zone())));
        remarks.add(say.it(
                "Reckoned for one crew that does one after the other. Litres rank the openings and promise nothing."));
        return List.copyOf(remarks);
    }

    private String acts(RainCall.Order order) {
        return order.stops().isEmpty()
                ? say.it("there is no time for any of them")
                : order.stops().stream()
                        .map(stop -> say.it(stop.act() == Act.CLOSE ? "close {0}" : "cover {0}", stop.opening()))
                        .collect(Collectors.joining(", "));
    }
}
