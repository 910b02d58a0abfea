package drylap.raincall;

import drylap.assembly.RainCheck;
import drylap.assembly.RainRating;
import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** One site at one moment: what stands open, and what the coming day does to it. */
final class Scene {
    /** Water is counted for this long: by the next day someone is back. Planning choice of this project. */
    private static final Duration AHEAD = Duration.ofHours(24);

    private static final int THOUSAND = 1000;

    private final JobFolder folder;
    private final Site site;
    private final Instant now;
    private final Rules rules;
    private final Forecast forecast;
    private final Optional<Duration> seen;
    private final SiteWeather weather;

    Scene(JobFolder folder, SiteId id, Instant now, Optional<Duration> seen) {
        this.folder = folder;
        this.now = now;
        this.seen = seen;
        rules = folder.rules().at(id);
        site = folder.sites().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the folder has no site " + id));
        forecast = folder.forecast(id);
        // what is seen may come a day sooner or later than what is forecast
        var span = new TimeWindow(now.minus(AHEAD), until().plus(AHEAD).plus(RainCalls.EARLIER));
        weather = SiteWeather.of(site, forecast, rules, span);
    }

    Instant until() {
        return now.plus(AHEAD);
    }

    Optional<Instant> rainAt() {
        return weather.nextRain(now).map(TimeWindow::from).filter(at -> at.isBefore(until()));
    }

    List<Opening> open() {
        return folder.openings().stream()
                .filter(one -> one.facade().site().equals(site.id()))
                .filter(one -> one.stepList().open(one.done()))
                .toList();
    }

    /** @param earlier by how much everything the sky does comes before its time */
    List<OpenToRain> question(List<Opening> open, Duration earlier) {
        var sky = sky(earlier);
        return open.stream().map(one -> toRain(one, sky)).toList();
    }

    private Sky sky(Duration earlier) {
        var said = seen.map(time -> time.compareTo(earlier) > 0 ? time.minus(earlier) : Duration.ZERO);
        var shift = seen.flatMap(time -> rainAt().map(at -> Duration.between(now, at.isBefore(now) ? now : at))
                        .map(forecast -> forecast.minus(time)))
                .orElse(Duration.ZERO);
        return new Sky(now.plus(shift).plus(earlier), said, seen.isPresent() && rainAt().isEmpty());
    }

    private OpenToRain toRain(Opening opening, Sky sky) {
        var facade = facade(opening.facade());
        var rain = new WallRain(forecast, rules, facade.azimuthDeg());
        return new OpenToRain(
                opening.id(),
                folder.labour().minutes(opening, Task.INSTALL),
                closeBy(facade, sky),
                (int) Math.ceil(rules.value(Rule.COVER_MIN)),
                coverLetsIn(opening),
                sky.unforeseen()
                        ? rain.shower(opening, sky.at(), sky.dry(), AHEAD)
                        : rain.on(opening, sky.at(), AHEAD).dryBefore(sky.dry()));
    }

    /**
     * The sky that comes over the site now.
     *
     * @param at the moment of the forecast that it is taken from
     * @param said in how long the crew sees the rain come
     * @param unforeseen no forecast has that rain
     */
    private record Sky(Instant at, Optional<Duration> said, boolean unforeseen) {
        int dry() {
            return said.map(time -> (int) time.toMinutes()).orElse(0);
        }
    }

    /** Until the install hours that are open now end; not at all where they are shut. */
    private int closeBy(Facade facade, Sky sky) {
        int open = weather.openHours(facade).windows(Task.INSTALL).stream()
                .filter(window -> window.contains(sky.at()))
                .findFirst()
                .map(window -> (int) Duration.between(sky.at(), window.until()).toMinutes())
                .orElse(0);
        // nothing bonds later than the skin needs before the rain that is seen
        int skin = (int) Math.ceil(rules.value(Rule.SKIN_MIN));
        return sky.said().isEmpty() ? open : Math.min(open, Math.max(0, sky.dry() - skin));
    }

    /** A cover closes every junction that fails of an opening that needs no more than a cover; of any other it leaves a share. */
    private int coverLetsIn(Opening opening) {
        var list = opening.workList();
        var rating = RainCheck.of(list.built(list.doneBy(opening.done()))).rating();
        return rating == RainRating.OPEN ? (int) Math.round(rules.value(Rule.COVER_LETS_IN) * THOUSAND) : 0;
    }

    private Facade facade(FacadeId id) {
        return folder.facades().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
