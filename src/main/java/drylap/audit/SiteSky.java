package drylap.audit;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a site's forecast and its sun say, minute by minute. A minute outside the forecast is neither wet nor cold. */
final class SiteSky {
    /** Two ways to reckon the sun, and rounding to whole minutes, may differ by this much at dawn and at dusk. */
    static final Duration SUN_TOLERANCE = Duration.ofMinutes(1);

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final long HOUR_S = 3600;

    private final Site site;
    private final List<ForecastHour> hours;
    private final Rules rules;
    private final Map<LocalDate, Sun.Day> suns = new HashMap<>();

    SiteSky(Site site, Forecast forecast, Rules rules) {
        this.site = site;
        this.hours = forecast.hours();
        this.rules = rules;
    }

    List<ForecastHour> hours() {
        return hours;
    }

    /** The place of the forecast hour that holds the instant; -1 before and after the forecast. */
    int indexOf(Instant instant) {
        if (hours.isEmpty()) return -1;
        long seconds = instant.getEpochSecond() - hours.getFirst().start().getEpochSecond();
        long index = Math.floorDiv(seconds, HOUR_S);
        return index < 0 || index >= hours.size() ? -1 : (int) index;
    }

    boolean raining(int index) {
        ForecastHour hour = hours.get(index);
        return hour.rainProbability() >= rules.value(Rule.RAIN_P) && hour.rainMm() >= rules.value(Rule.RAIN_MM);
    }

    /**
     * Whether the minute from the instant lies outside the stretch from sunrise to sunset less the margin. Far north the sun
     * of a date may set after midnight, so the dates beside it count too.
     */
    boolean dark(Instant minute, Duration tolerance) {
        LocalDate date = minute.atZone(site.zone()).toLocalDate();
        return Stream.of(date, date.minusDays(1), date.plusDays(1))
                .noneMatch(day -> light(sun(day), minute, tolerance));
    }

    private Sun.Day sun(LocalDate date) {
        return suns.computeIfAbsent(date, day -> Sun.day(site.place(), site.zone(), day));
    }

    private boolean light(Sun.Day sun, Instant minute, Duration tolerance) {
        Instant last = sun.set().minusSeconds(Math.round(rules.value(Rule.DUSK_MARGIN_MIN) * 60));
        return !minute.isBefore(sun.rise().minus(tolerance))
                && !minute.plus(MINUTE).isAfter(last.plus(tolerance));
    }

    /** Whether an install that ends then would meet rain before its sealant has skinned. */
    boolean skinCutShort(Instant end) {
        Duration skin = Duration.ofSeconds(Math.round(rules.value(Rule.SKIN_MIN) * 60));
        for (int i = 0; i < hours.size(); i++) {
            Instant rain = hours.get(i).start();
            if (raining(i) && end.isAfter(rain.minus(skin)) && !end.isAfter(rain)) return true;
        }
        return false;
    }

    /** The start of the first raining hour that is not over at the instant. */
    Optional<Instant> nextRain(Instant from) {
        for (int i = 0; i < hours.size(); i++) {
            Instant start = hours.get(i).start();
            if (raining(i) && start.plusSeconds(HOUR_S).isAfter(from)) return Optional.of(start);
        }
        return Optional.empty();
    }

    /** The chance of rain in any hour that the stretch touches; hours outside the forecast count as dry. */
    double chanceOfRain(Instant from, Instant until) {
        List<Double> chances = new ArrayList<>();
        for (ForecastHour hour : hours)
            if (hour.start().isBefore(until) && hour.start().plusSeconds(HOUR_S).isAfter(from))
                chances.add(hour.rainProbability());
        return PersistentRain.chance(chances, PersistentRain.RHO);
    }
}
