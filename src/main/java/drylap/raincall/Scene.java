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
    private final SiteWeather weather;

    Scene(JobFolder folder, SiteId id, Instant now) {
        this.folder = folder;
        this.now = now;
        rules = folder.rules().at(id);
        site = folder.sites().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the folder has no site " + id));
        forecast = folder.forecasts().stream()
                .filter(one -> one.site().equals(id))
                .findFirst()
                .orElseGet(() -> Forecast.none(id));
        weather = SiteWeather.of(site, forecast, rules, new TimeWindow(now, until().plus(RainCalls.EARLIER)));
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
        var sky = now.plus(earlier);
        return open.stream().map(one -> toRain(one, sky)).toList();
    }

    private OpenToRain toRain(Opening opening, Instant sky) {
        var facade = facade(opening.facade());
        return new OpenToRain(
                opening.id(),
                folder.labour().minutes(opening, Task.INSTALL),
                closeBy(facade, sky),
                (int) Math.ceil(rules.value(Rule.COVER_MIN)),
                coverLetsIn(opening),
                new WallRain(forecast, rules, facade.azimuthDeg()).on(opening, sky, AHEAD));
    }

    /** Until the install hours that are open now end; not at all where they are shut. */
    private int closeBy(Facade facade, Instant sky) {
        return weather.openHours(facade).windows(Task.INSTALL).stream()
                .filter(window -> window.contains(sky))
                .findFirst()
                .map(window -> (int) Duration.between(sky, window.until()).toMinutes())
                .orElse(0);
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
