package drylap.planning.solver;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.OpenWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.OpenHours;
import drylap.weather.SiteWeather;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The weather of a job folder over the plan's span, in the shapes that the search wants. */
final class Skies {
    private final TimeAxis axis;
    private final Map<SiteId, SiteWeather> weather = new HashMap<>();
    private final Map<SiteId, RainOdds> odds = new HashMap<>();
    private final Map<FacadeId, OpenHours> hours = new HashMap<>();
    private final Map<FacadeId, Map<Task, OpenTimes>> open = new HashMap<>();
    /** Facades often share their windows; so do they here. */
    private final Map<List<TimeWindow>, OpenTimes> shared = new IdentityHashMap<>();

    Skies(JobFolder folder, Span span) {
        axis = span.axis();
        Map<SiteId, Forecast> forecasts =
                folder.forecasts().stream().collect(Collectors.toMap(Forecast::site, Function.identity()));
        for (Site site : folder.sites()) {
            Forecast forecast = forecasts.getOrDefault(site.id(), Forecast.none(site.id()));
            SiteWeather sky = SiteWeather.of(site, forecast, folder.rules().at(site.id()), span.window());
            weather.put(site.id(), sky);
            Instant anHour = forecast.hours().isEmpty()
                    ? Instant.EPOCH
                    : forecast.hours().getFirst().start();
            odds.put(site.id(), new RainOdds(sky, axis, RainOdds.gridStart(axis, anHour), span.horizonEnd()));
        }
        for (Facade facade : folder.facades()) addFacade(facade);
    }

    private void addFacade(Facade facade) {
        OpenHours windows = at(facade.id().site()).openHours(facade);
        hours.put(facade.id(), windows);
        Map<Task, OpenTimes> times = new EnumMap<>(Task.class);
        for (Task kind : Task.values())
            times.put(kind, shared.computeIfAbsent(windows.windows(kind), list -> new OpenTimes(list, axis)));
        open.put(facade.id(), times);
    }

    OpenTimes open(FacadeId facade, Task kind) {
        return Objects.requireNonNull(Objects.requireNonNull(open.get(facade)).get(kind));
    }

    RainOdds odds(SiteId site) {
        return Objects.requireNonNull(odds.get(site));
    }

    /** The start of the first raining hour that is not over when the plan starts; NEVER if none is forecast. */
    int nextRain(SiteId site) {
        return at(site).nextRain(axis.zero())
                .map(rain -> axis.floor(rain.from()))
                .orElse(TimeAxis.NEVER);
    }

    List<OpenWindow> openWindows(List<Facade> facades) {
        List<OpenWindow> all = new ArrayList<>();
        for (Facade facade : facades)
            for (Task kind : Task.values())
                for (TimeWindow window :
                        Objects.requireNonNull(hours.get(facade.id())).windows(kind))
                    all.add(new OpenWindow(facade.id(), kind, window));
        return all;
    }

    private SiteWeather at(SiteId site) {
        return Objects.requireNonNull(weather.get(site));
    }
}
