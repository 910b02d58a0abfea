package drylap.ui.drawn;

import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.Strip.Limits;
import drylap.ui.drawn.Strip.Midnight;
import drylap.ui.drawn.Strip.Sky;
import drylap.ui.drawn.Strip.Stretch;
import drylap.ui.drawn.Strip.TaskHours;
import drylap.weather.DrivingRain;
import drylap.weather.ForecastHour;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Draws a facade's open hours over the first days of a folder. */
public final class StripPresenter {
    /** More days than this cannot be told apart on a strip. */
    private static final int LONGEST_DAYS = 8;

    private static final int PERCENT = 100;

    private final Speech say;
    private final FolderShown shown;
    private final Facade facade;
    private final Site site;
    private final SiteWeather weather;
    private final Rules rules;
    private final TimeWindow span;

    private StripPresenter(Speech say, FolderShown shown, FacadeId id) {
        this.say = say;
        this.shown = shown;
        facade = shown.facade(id);
        site = shown.site(id.site());
        weather = shown.weather(id.site());
        rules = shown.folder().rules().at(id.site());
        LocalDate end = shown.firstDay().plusDays(LONGEST_DAYS);
        LocalDate last = shown.lastDay().plusDays(1);
        span = new TimeWindow(midnight(shown.firstDay()), midnight(last.isBefore(end) ? last : end));
    }

    public static Strip strip(Speech say, FolderShown shown, FacadeId facade) {
        return new StripPresenter(say, shown, facade).strip();
    }

    /** The same hour by hour, as the strip's table has it. */
    public static List<StripHour> hours(Speech say, FolderShown shown, FacadeId facade) {
        var presenter = new StripPresenter(say, shown, facade);
        return StripHour.of(presenter.strip(), presenter.span.from().atZone(presenter.site.zone()));
    }

    private Strip strip() {
        return new Strip(
                shown.title(facade.id()),
                say.it(Words.heading(facade)),
                span.length().toMinutes(),
                dates().stream()
                        .map(date -> new Midnight(minute(midnight(date)), say.day(date)))
                        .toList(),
                sky(hours(site.id())),
                new Limits(
                        (int) Math.round(rules.value(Rule.RAIN_P) * PERCENT),
                        rules.value(Rule.INSTALL_GUST),
                        rules.value(Rule.INSTALL_MIN_C)),
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
        return shown.folder().forecast(id).hours().stream()
                .filter(hour -> span.contains(hour.start()))
                .toList();
    }

    private Sky sky(List<ForecastHour> hours) {
        return new Sky(
                hours.isEmpty() ? 0 : minute(hours.getFirst().start()),
                each(hours, ForecastHour::rainMm, 10),
                hours.stream()
                        .map(hour -> (int) Math.round(hour.rainProbability() * PERCENT))
                        .toList(),
                hours.stream().map(this::raining).toList(),
                each(hours, this::onTheWall, PERCENT),
                hours.stream()
                        .map(hour -> raining(hour) && onTheWall(hour) >= rules.value(Rule.WETTING))
                        .toList(),
                each(hours, ForecastHour::gustMs, 10),
                each(hours, ForecastHour::temperatureC, 10));
    }

    private static List<Double> each(List<ForecastHour> hours, ToDoubleFunction<ForecastHour> value, int parts) {
        return hours.stream()
                .map(hour -> (double) Math.round(value.applyAsDouble(hour) * parts) / parts)
                .toList();
    }

    private double onTheWall(ForecastHour hour) {
        return DrivingRain.hourly(hour, facade.azimuthDeg());
    }

    private boolean raining(ForecastHour hour) {
        return weather.raining().stream().anyMatch(window -> window.contains(hour.start()));
    }

    private TaskHours open(Task task) {
        List<TimeWindow> windows = weather.openHours(facade).windows(task).stream()
                .filter(span::overlaps)
                .toList();
        return new TaskHours(task.code(), stretches(windows), DayWords.days(say, windows, site.zone()));
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
