package drylap.audit;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/** What a site's forecast and its sun say, minute by minute. A minute outside the forecast is neither wet nor cold. */
final class SiteSky {
    /** Two ways to reckon the sun, and rounding to whole minutes, may differ by this much at dawn and at dusk. */
    static final Duration SUN_TOLERANCE = Duration.ofMinutes(1);

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final long HOUR_S = 3600;

    private final Site site;
    private final List<ForecastHour> hours;
    private final Rules rules;
    private final Duration duskMargin;
    private final Duration skin;
    private final NavigableSet<Instant> rainStarts = new TreeSet<>();
    private Near near = new Near(Instant.MAX, Instant.MAX, List.of());

    /** The suns that can shine on a date; kept while one minute follows another. */
    private record Near(Instant from, Instant until, List<Sun.Day> suns) {
        boolean holds(Instant minute) {
            return !minute.isBefore(from) && minute.isBefore(until);
        }
    }

    SiteSky(Site site, Forecast forecast, Rules rules) {
        this.site = site;
        this.hours = forecast.hours();
        this.rules = rules;
        duskMargin = minutes(Rule.DUSK_MARGIN_MIN);
        skin = minutes(Rule.SKIN_MIN);
        for (int i = 0; i < hours.size(); i++)
            if (raining(i)) rainStarts.add(hours.get(i).start());
    }

    private Duration minutes(Rule rule) {
        return Duration.ofSeconds(Math.round(rules.value(rule) * 60));
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
        if (!near.holds(minute)) near = near(minute);
        for (Sun.Day sun : near.suns()) if (light(sun, minute, tolerance)) return false;
        return true;
    }

    private Near near(Instant minute) {
        LocalDate date = minute.atZone(site.zone()).toLocalDate();
        return new Near(
                date.atStartOfDay(site.zone()).toInstant(),
                date.plusDays(1).atStartOfDay(site.zone()).toInstant(),
                List.of(sun(date), sun(date.minusDays(1)), sun(date.plusDays(1))));
    }

    private Sun.Day sun(LocalDate date) {
        return Sun.day(site.place(), site.zone(), date);
    }

    private boolean light(Sun.Day sun, Instant minute, Duration tolerance) {
        return !minute.isBefore(sun.rise().minus(tolerance))
                && !minute.plus(MINUTE).isAfter(sun.set().minus(duskMargin).plus(tolerance));
    }

    /** Whether an install that ends then would meet rain before its sealant has skinned. */
    boolean skinCutShort(Instant end) {
        Instant rain = rainStarts.ceiling(end);
        return rain != null && end.isAfter(rain.minus(skin));
    }

    /** The start of the first raining hour that is not over at the instant. */
    Optional<Instant> nextRain(Instant from) {
        return Optional.ofNullable(rainStarts.higher(from.minusSeconds(HOUR_S)));
    }

    /**
     * The chance of rain in any hour that the stretch touches: one of several hours counted once; each hour that is not
     * forecast as likely as the rule says.
     */
    double chanceOfRain(Instant from, Instant until) {
        List<Double> chances = new ArrayList<>();
        Instant period = Instant.MIN;
        for (Instant hour = startOfHour(from); hour.isBefore(until); hour = hour.plusSeconds(HOUR_S)) {
            int index = indexOf(hour);
            Instant told = index < 0 ? hour : hours.get(index).chanceFrom();
            if (!told.equals(period))
                chances.add(
                        index < 0
                                ? rules.value(Rule.BEYOND_RAIN_P)
                                : hours.get(index).rainProbability());
            period = told;
        }
        return PersistentRain.chance(chances, rules.value(Rule.RAIN_PERSISTENCE));
    }

    /** Hours outside the forecast go on in step with its own. */
    private Instant startOfHour(Instant instant) {
        long first = hours.isEmpty() ? 0 : hours.getFirst().start().getEpochSecond();
        return instant.truncatedTo(ChronoUnit.SECONDS)
                .minusSeconds(Math.floorMod(instant.getEpochSecond() - first, HOUR_S));
    }
}
