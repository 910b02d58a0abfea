package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.TimeWindow;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The forecast's rain, worked out once for all walls of a site. */
final class ForecastRain {
    static final Duration HOUR = Duration.ofHours(1);
    private static final double PERSISTENCE = 0.6;

    private final List<ForecastHour> hours;
    private final BitSet raining = new BitSet();
    private final double[] headOn;
    private final double[] staysDry;
    private final double wetting;

    ForecastRain(Forecast forecast, Rules rules) {
        hours = forecast.hours();
        headOn = new double[hours.size()];
        staysDry = new double[hours.size()];
        wetting = rules.value(Rule.WETTING);
        double rainP = rules.value(Rule.RAIN_P);
        double rainMm = rules.value(Rule.RAIN_MM);
        for (int i = 0; i < hours.size(); i++) {
            ForecastHour hour = hours.get(i);
            RainChance.checked(hour.rainProbability());
            if (hour.rainProbability() >= rainP && hour.rainMm() >= rainMm) raining.set(i);
            headOn[i] = DrivingRain.headOn(hour.windMs(), hour.rainMm());
            if (i > 0)
                staysDry[i] =
                        RainChance.staysDry(PERSISTENCE, hours.get(i - 1).rainProbability(), hour.rainProbability());
        }
    }

    List<ForecastHour> raining() {
        return raining.stream().mapToObj(hours::get).toList();
    }

    /** The hours that wet a wall of this bearing. */
    List<ForecastHour> wetting(double azimuthDeg) {
        return raining.stream()
                .filter(i -> headOn[i] * DrivingRain.share(hours.get(i).windFromDeg(), azimuthDeg) >= wetting)
                .mapToObj(hours::get)
                .toList();
    }

    Optional<TimeWindow> next(Instant from) {
        int next = raining.nextSetBit(hoursStartedBy(from) == 0 ? 0 : hoursStartedBy(from) - 1);
        while (next >= 0 && !hours.get(next).start().plus(HOUR).isAfter(from)) next = raining.nextSetBit(next + 1);
        return next < 0 ? Optional.empty() : Optional.of(window(next));
    }

    double chance(Instant from, Instant until) {
        if (until.isBefore(from))
            throw new IllegalArgumentException("a stretch from %s until %s runs backwards".formatted(from, until));
        if (from.equals(until)
                || hours.isEmpty()
                || !from.isBefore(hours.getLast().start().plus(HOUR))) return 0;
        int first = Math.max(0, hoursStartedBy(from) - 1);
        int end = hoursStartedBefore(until);
        if (first >= end) return 0;
        double dry = 1 - hours.get(first).rainProbability();
        for (int i = first + 1; i < end; i++) dry *= staysDry[i];
        return 1 - dry;
    }

    private TimeWindow window(int hour) {
        Instant start = hours.get(hour).start();
        return new TimeWindow(start, start.plus(HOUR));
    }

    private int hoursStartedBy(Instant instant) {
        if (hours.isEmpty() || instant.isBefore(hours.getFirst().start())) return 0;
        return (int) Math.min(hours.size(), 1 + hours.getFirst().start().until(instant, ChronoUnit.HOURS));
    }

    private int hoursStartedBefore(Instant instant) {
        int started = hoursStartedBy(instant);
        return started > 0 && hours.get(started - 1).start().equals(instant) ? started - 1 : started;
    }
}
