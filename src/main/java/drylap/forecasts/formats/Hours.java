package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import drylap.forecasts.PeriodChance;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What a source tells of each hour, quantity by quantity, as it is read. A total is shared out evenly before it comes here. */
final class Hours {
    static final Duration HOUR = Duration.ofHours(1);
    /** No source looks further; a wrong length would fill the memory. */
    static final int MOST = 24 * 40;

    /** @param from the start of the period that a chance is told for */
    record Told(double value, Instant from) {}

    private record Period(Instant from, int count, double percent) {}

    private final Findings findings;
    private final Map<Quantity, NavigableMap<Instant, Told>> told = new EnumMap<>(Quantity.class);
    private final NavigableSet<Instant> hours = new TreeSet<>();
    private final List<Period> periods = new ArrayList<>();
    private boolean full;

    Hours(Findings findings) {
        this.findings = findings;
        for (Quantity quantity : Quantity.values()) told.put(quantity, new TreeMap<>());
    }

    NavigableMap<Instant, Told> of(Quantity quantity) {
        return Objects.requireNonNull(told.get(quantity));
    }

    NavigableSet<Instant> all() {
        return hours;
    }

    /** A value that is checked by now, for one hour; {@code where} is the place to blame if it cannot stand there. */
    void put(String where, Quantity quantity, Instant start, double value) {
        put(where, quantity, start, 1, value);
    }

    /**
     * A value that holds in each of some hours; a chance is that of rain at any time in them.
     *
     * @param value in our unit, an hour's share where it is an amount
     */
    void put(String where, Quantity quantity, Instant start, int count, double value) {
        String fault = quantity.fault(value);
        if (fault != null) findings.add(where, fault, quantity.accepted());
        else if (count > MOST) tooMany(where, count);
        else
            for (int h = 0; h < count && !full; h++)
                put(where, quantity, start.plus(HOUR.multipliedBy(h)), new Told(value, start));
    }

    /** The chance of a period, in one of its hours. */
    void share(String where, Instant hour, double percent, Instant from) {
        String fault = Quantity.CHANCE.fault(percent);
        if (fault != null) findings.add(where, fault, Quantity.CHANCE.accepted());
        else put(where, Quantity.CHANCE, hour, new Told(percent, from));
    }

    /** The chance of a period beside those of its hours; it stands for none of them. */
    void together(String where, Instant from, int count, double percent) {
        String fault = Quantity.CHANCE.fault(percent);
        if (fault != null) findings.add(where, fault, Quantity.CHANCE.accepted());
        else periods.add(new Period(from, count, percent));
    }

    /** The periods of which each hour has told a chance of its own. */
    List<PeriodChance> periods() {
        return periods.stream()
                .filter(this::eachHourTold)
                .map(period -> new PeriodChance(period.from(), period.count(), period.percent() / 100))
                .toList();
    }

    private boolean eachHourTold(Period period) {
        return IntStream.range(0, period.count())
                .mapToObj(hour -> period.from().plus(HOUR.multipliedBy(hour)))
                .allMatch(hour -> {
                    Told chance = of(Quantity.CHANCE).get(hour);
                    return chance != null && chance.from().equals(hour);
                });
    }

    private void put(String where, Quantity quantity, Instant hour, Told value) {
        if (!inStep(where, hour)) return;
        @Nullable Told before = of(quantity).putIfAbsent(hour, value);
        if (before != null)
            findings.add(where, ForecastWords.AGAIN.with(quantity.words(), hour), ForecastWords.ONCE.with());
        hours.add(hour);
        if (hours.size() > MOST) tooMany(where, hours.size());
    }

    private boolean inStep(String where, Instant hour) {
        if (hours.isEmpty()) return true;
        boolean inStep = Duration.between(hours.first(), hour).toSeconds() % HOUR.toSeconds() == 0
                && hour.getNano() == hours.first().getNano();
        if (!inStep)
            findings.add(where, ForecastWords.OUT_OF_STEP.with(hour), ForecastWords.IN_STEP.with(hours.first()));
        return inStep;
    }

    private void tooMany(String where, int count) {
        full = true;
        findings.add(where, ForecastWords.TOO_FAR.with(count), ForecastWords.AS_FAR.with(MOST));
    }
}
