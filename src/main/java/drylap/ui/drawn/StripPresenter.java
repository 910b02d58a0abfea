package drylap.ui.drawn;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.ui.drawn.Strip.Midnight;
import drylap.ui.drawn.Strip.RainHour;
import drylap.ui.drawn.Strip.Stretch;
import drylap.ui.drawn.Strip.TaskHours;
import drylap.weather.ForecastHour;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Draws a facade's open hours over the first days of a folder. */
public final class StripPresenter {
    /** More days than this cannot be told apart on a strip. */
    private static final int LONGEST_DAYS = 8;

    private final FolderShown shown;
    private final Facade facade;
    private final Site site;
    private final SiteWeather weather;
    private final TimeWindow span;

    private StripPresenter(FolderShown shown, FacadeId id) {
        this.shown = shown;
        facade = shown.facade(id);
        site = shown.site(id.site());
        weather = shown.weather(id.site());
        LocalDate end = shown.firstDay().plusDays(LONGEST_DAYS);
        LocalDate last = shown.lastDay().plusDays(1);
        span = new TimeWindow(midnight(shown.firstDay()), midnight(last.isBefore(end) ? last : end));
    }

    public static Strip strip(FolderShown shown, FacadeId facade) {
        return new StripPresenter(shown, facade).strip();
    }

    private Strip strip() {
        return new Strip(
                shown.title(facade.id()),
                Words.heading(facade),
                span.length().toMinutes(),
                dates().stream()
                        .map(date -> new Midnight(minute(midnight(date)), Words.weekday(date) + " " + Words.date(date)))
                        .toList(),
                hours(site.id()).stream().map(this::rain).toList(),
                stretches(weather.dark()),
                minute(weather.forecastEnd()),
                Arrays.stream(Task.values()).map(this::open).toList());
    }

    private List<LocalDate> dates() {
        return shown.firstDay()
                .datesUntil(span.until().atZone(site.zone()).toLocalDate())
                .toList();
    }

    private Instant midnight(LocalDate date) {
        return date.atStartOfDay(site.zone()).toInstant();
    }

    private List<ForecastHour> hours(SiteId id) {
        return shown.folder().forecasts().stream()
                .filter(forecast -> forecast.site().equals(id))
                .flatMap(forecast -> forecast.hours().stream())
                .filter(hour -> span.contains(hour.start()))
                .toList();
    }

    private RainHour rain(ForecastHour hour) {
        return new RainHour(
                minute(hour.start()),
                hour.rainMm(),
                hour.rainProbability(),
                weather.raining().stream().anyMatch(window -> window.contains(hour.start())));
    }

    private TaskHours open(Task task) {
        List<TimeWindow> windows = weather.openHours(facade).windows(task).stream()
                .filter(span::overlaps)
                .toList();
        return new TaskHours(task.code(), stretches(windows), words(windows));
    }

    private List<String> words(List<TimeWindow> windows) {
        Map<LocalDate, List<TimeWindow>> byDate = windows.stream()
                .collect(Collectors.groupingBy(
                        window -> window.from().atZone(site.zone()).toLocalDate(), TreeMap::new, Collectors.toList()));
        return byDate.entrySet().stream()
                .map(day -> "%s %s %s"
                        .formatted(
                                Words.weekday(day.getKey()),
                                Words.date(day.getKey()),
                                day.getValue().stream()
                                        .map(window -> Words.clock(window.from(), site.zone()) + " to "
                                                + Words.clock(window.until(), site.zone()))
                                        .collect(Collectors.joining(", "))))
                .toList();
    }

    private List<Stretch> stretches(List<TimeWindow> windows) {
        return windows.stream()
                .filter(span::overlaps)
                .map(window -> new Stretch(minute(window.from()), minute(window.until())))
                .toList();
    }

    /** Minutes from the strip's start, cut off at its ends. */
    private long minute(Instant instant) {
        if (instant.isBefore(span.from())) return 0;
        if (instant.isAfter(span.until())) return span.length().toMinutes();
        return Duration.between(span.from(), instant).toMinutes();
    }
}
