package drylap.forecasts;

import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A forecast with the hours before its first, as far as they join without a gap: a wall still dries from rain that fell before
 * the newest forecast begins.
 */
final class HoursBefore {
    private static final Duration HOUR = Duration.ofHours(1);

    private HoursBefore() {}

    /** @param former newest first: the newest that tells an hour tells it best; the imported one comes last */
    static Forecast joined(Forecast newest, List<Forecast> former, Forecast imported) {
        List<Forecast> tellers =
                Stream.concat(former.stream(), Stream.of(imported)).toList();
        Deque<ForecastHour> hours = new ArrayDeque<>();
        newest.hours().forEach(hour -> hours.add(begunWithin(hour, newest)));
        for (var before = told(tellers, hours.getFirst()); before.isPresent(); before = told(tellers, hours.getFirst()))
            hours.addFirst(before.get());
        return new Forecast(newest.site(), List.copyOf(hours));
    }

    /** A chance that began before the forecast does is not that of a former one's hours. */
    private static ForecastHour begunWithin(ForecastHour hour, Forecast newest) {
        Instant first = newest.hours().getFirst().start();
        return hour.chanceFrom().isBefore(first) ? hour.toldFrom(first) : hour;
    }

    private static Optional<ForecastHour> told(List<Forecast> tellers, ForecastHour first) {
        Instant wanted = first.start().minus(HOUR);
        for (Forecast teller : tellers) {
            @Nullable ForecastHour hour = at(teller, wanted);
            // one chance a former hour, so that none is shared between two forecasts
            if (hour != null) return Optional.of(hour.toldFrom(wanted));
        }
        return Optional.empty();
    }

    private static @Nullable ForecastHour at(Forecast teller, Instant start) {
        if (teller.hours().isEmpty()) return null;
        long index = Duration.between(teller.hours().getFirst().start(), start).toHours();
        if (index < 0 || index >= teller.hours().size()) return null;
        ForecastHour hour = teller.hours().get((int) index);
        return hour.start().equals(start) ? hour : null;
    }
}
