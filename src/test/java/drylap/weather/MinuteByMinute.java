package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The oracle of the open hours: asks of each minute, one by one, what the planning contract (section 4) asks of it, and
 * shares no code with what it judges but the records and the sun, which its own tests hold against other libraries.
 */
record MinuteByMinute(Site site, Forecast forecast, Rules rules, Map<LocalDate, Daylight> suns) {
    MinuteByMinute(Site site, Forecast forecast, Rules rules) {
        this(site, forecast, rules, new HashMap<>());
    }

    List<TimeWindow> open(Facade facade, Task task, TimeWindow span) {
        return runs(span, minute -> !shut(facade, task, minute) && mayEnd(task, minute.plusSeconds(60)));
    }

    List<TimeWindow> dark(TimeWindow span) {
        return runs(span, this::dark);
    }

    List<TimeWindow> raining(TimeWindow span) {
        return runs(span, minute -> covering(minute).stream().anyMatch(this::rains));
    }

    /** Whether the contract lets this task run from one minute to another. */
    boolean allows(Facade facade, Task task, Instant from, Instant until) {
        for (Instant minute = from; minute.isBefore(until); minute = minute.plusSeconds(60))
            if (shut(facade, task, minute)) return false;
        return mayEnd(task, until);
    }

    private static List<TimeWindow> runs(TimeWindow span, Predicate<Instant> holds) {
        List<TimeWindow> runs = new ArrayList<>();
        Instant start = null;
        for (Instant minute = span.from(); minute.isBefore(span.until()); minute = minute.plusSeconds(60)) {
            boolean in = holds.test(minute);
            if (in && start == null) start = minute;
            if (!in && start != null) runs.add(new TimeWindow(start, minute));
            if (!in) start = null;
        }
        if (start != null) runs.add(new TimeWindow(start, span.until()));
        return runs;
    }

    private boolean shut(Facade facade, Task task, Instant minute) {
        if (dark(minute)) return true;
        for (ForecastHour hour : covering(minute)) if (shut(facade, task, hour)) return true;
        return false;
    }

    private boolean shut(Facade facade, Task task, ForecastHour hour) {
        double gust = hour.gustMs();
        return switch (task) {
            case INSTALL ->
                rains(hour)
                        || dries(facade, hour)
                        || hour.temperatureC() < rules.value(Rule.INSTALL_MIN_C)
                        || gust > rules.value(Rule.INSTALL_GUST);
            case TEST -> hour.temperatureC() < 1 || gust > rules.value(Rule.INSTALL_GUST);
            case WRAP -> rains(hour) || gust > rules.value(Rule.WRAP_GUST);
            case CLAD -> rains(hour);
        };
    }

    private boolean mayEnd(Task task, Instant end) {
        if (task != Task.INSTALL) return true;
        for (ForecastHour hour : forecast.hours()) {
            double minutesToRain = Duration.between(end, hour.start()).toSeconds() / 60.0;
            if (rains(hour) && minutesToRain >= 0 && minutesToRain < rules.value(Rule.SKIN_MIN)) return false;
        }
        return true;
    }

    private boolean rains(ForecastHour hour) {
        return hour.rainProbability() >= rules.value(Rule.RAIN_P) && hour.rainMm() >= rules.value(Rule.RAIN_MM);
    }

    private boolean wetted(Facade facade, ForecastHour hour) {
        double angle = (hour.windFromDeg() - facade.azimuthDeg()) * Math.PI / 180;
        double litres = (2.0 / 9) * hour.windMs() * Math.pow(hour.rainMm(), 8.0 / 9) * Math.max(0, Math.cos(angle));
        return rains(hour) && litres >= rules.value(Rule.WETTING);
    }

    /** Some wetted hour reaches into the drying time that lies before this hour. */
    private boolean dries(Facade facade, ForecastHour hour) {
        for (ForecastHour earlier : forecast.hours()) {
            double hoursSince = Duration.between(earlier.start(), hour.start()).toMinutes() / 60.0 - 1;
            if (hoursSince >= 0 && hoursSince < rules.value(Rule.DRYING_H) && wetted(facade, earlier)) return true;
        }
        return false;
    }

    private List<ForecastHour> covering(Instant minute) {
        return forecast.hours().stream()
                .filter(hour -> !minute.isBefore(hour.start())
                        && minute.isBefore(hour.start().plusSeconds(3600)))
                .toList();
    }

    /** A minute is light when it lies wholly between the sunrise and the sunset less the margin of one of the days around it. */
    private boolean dark(Instant minute) {
        LocalDate today = minute.atZone(site.zone()).toLocalDate();
        for (LocalDate date : List.of(today.minusDays(1), today, today.plusDays(1))) {
            switch (suns.computeIfAbsent(date, this::sun)) {
                case Daylight.RisesAndSets day -> {
                    Instant rise = day.sunrise();
                    Instant end = day.sunset().minusMillis((long) (rules.value(Rule.DUSK_MARGIN_MIN) * 60_000));
                    if (!minute.isBefore(rise) && !minute.plusSeconds(60).isAfter(end)) return false;
                }
                case Daylight.UpAllDay _ -> {
                    if (date.equals(today)) return false;
                }
                default -> {}
            }
        }
        return true;
    }

    private Daylight sun(LocalDate date) {
        return Daylight.of(site, date);
    }
}
