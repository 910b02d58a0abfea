package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Says why a facade is shut for a task; a stretch has no cause exactly when all of it is open. */
public final class ShutCauses {
    private static final double TEST_MIN_C = 1;

    private final Forecast forecast;
    private final Rules rules;
    private final List<ForecastHour> raining;
    private final List<ForecastHour> wetting;
    private final List<TimeWindow> dark;

    private ShutCauses(Facade facade, Forecast forecast, Rules rules, List<TimeWindow> dark) {
        this.forecast = forecast;
        this.rules = rules;
        this.dark = dark;
        ForecastRain rain = new ForecastRain(forecast, rules);
        raining = rain.raining();
        wetting = rain.wetting(facade.azimuthDeg());
    }

    /** Of a facade of the site. */
    public static ShutCauses of(Site site, Facade facade, Forecast forecast, Rules rules, TimeWindow span) {
        SiteWeather weather = SiteWeather.of(site, forecast, rules, span);
        return new ShutCauses(facade, forecast, rules, weather.dark());
    }

    /** All that shuts the facade for the task in some minute of the stretch. */
    public Set<ShutCause> within(Task task, TimeWindow stretch) {
        Set<ShutCause> causes = EnumSet.noneOf(ShutCause.class);
        if (task != Task.TEST && rains(stretch)) causes.add(ShutCause.RAIN);
        if (task == Task.INSTALL && skins(stretch)) causes.add(ShutCause.SKIN);
        if (task == Task.INSTALL && dries(stretch)) causes.add(ShutCause.DRYING);
        if (anyHour(stretch, hour -> cold(task, hour))) causes.add(ShutCause.COLD);
        if (anyHour(stretch, hour -> gusts(task, hour))) causes.add(ShutCause.GUST);
        if (dark.stream().anyMatch(stretch::overlaps)) causes.add(ShutCause.DARK);
        return causes;
    }

    private boolean rains(TimeWindow stretch) {
        return raining.stream().anyMatch(hour -> stretch.overlaps(whole(hour)));
    }

    private boolean skins(TimeWindow stretch) {
        Duration lead = Duration.ofNanos(Math.round(rules.value(Rule.SKIN_MIN) * 60e9));
        return !lead.isZero()
                && raining.stream()
                        .anyMatch(hour ->
                                stretch.overlaps(new TimeWindow(hour.start().minus(lead), hour.start())));
    }

    private boolean dries(TimeWindow stretch) {
        Duration time = Duration.ofHours((long) Math.ceil(rules.value(Rule.DRYING_H)));
        return wetting.stream().anyMatch(hour -> {
            Instant from = hour.start().plus(ForecastRain.HOUR);
            Instant until = from.plus(time).isAfter(forecast.end()) ? forecast.end() : from.plus(time);
            return from.isBefore(until) && stretch.overlaps(new TimeWindow(from, until));
        });
    }

    private boolean cold(Task task, ForecastHour hour) {
        return switch (task) {
            case INSTALL -> hour.temperatureC() < rules.value(Rule.INSTALL_MIN_C);
            case TEST -> hour.temperatureC() < TEST_MIN_C;
            case WRAP, CLAD -> false;
        };
    }

    private boolean gusts(Task task, ForecastHour hour) {
        return switch (task) {
            case INSTALL, TEST -> hour.gustMs() > rules.value(Rule.INSTALL_GUST);
            case WRAP -> hour.gustMs() > rules.value(Rule.WRAP_GUST);
            case CLAD -> false;
        };
    }

    private boolean anyHour(TimeWindow stretch, Predicate<ForecastHour> shuts) {
        return forecast.hours().stream().anyMatch(hour -> stretch.overlaps(whole(hour)) && shuts.test(hour));
    }

    private static TimeWindow whole(ForecastHour hour) {
        return new TimeWindow(hour.start(), hour.start().plus(ForecastRain.HOUR));
    }
}
