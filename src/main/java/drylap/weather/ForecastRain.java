package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.TimeWindow;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/** The forecast's rain, worked out once for all walls of a site. */
final class ForecastRain {
    static final Duration HOUR = Duration.ofHours(1);

    private final List<ForecastHour> hours;
    private final BitSet raining = new BitSet();
    private final double[] headOn;
    private final double[] staysDry;
    private final double wetting;
    private final double beyond;
    private final double persistence;
    private final long firstSecond;

    ForecastRain(Forecast forecast, Rules rules) {
        hours = forecast.hours();
        headOn = new double[hours.size()];
        staysDry = new double[hours.size()];
        wetting = rules.value(Rule.WETTING);
        beyond = rules.value(Rule.BEYOND_RAIN_P);
        persistence = rules.value(Rule.RAIN_PERSISTENCE);
        firstSecond = hours.isEmpty() ? 0 : hours.getFirst().start().getEpochSecond();
        for (int i = 0; i < hours.size(); i++) {
            ForecastHour hour = hours.get(i);
            double chance = RainChance.checked(hour.rainProbability());
            if (rains(hour, rules)) raining.set(i);
            headOn[i] = DrivingRain.headOn(hour.windMs(), hour.rainMm());
            staysDry[i] = i == 0 ? 1 : staysDry(hours.get(i - 1), hour, chance);
        }
    }

    /** The chance of a period is that of rain at any time in it, so its later hours add nothing to what its first has told. */
    private double staysDry(ForecastHour before, ForecastHour hour, double chance) {
        return hour.sharesChanceWith(before) ? 1 : RainChance.staysDry(persistence, before.rainProbability(), chance);
    }

    private static boolean rains(ForecastHour hour, Rules rules) {
        return hour.rainProbability() >= rules.value(Rule.RAIN_P) && hour.rainMm() >= rules.value(Rule.RAIN_MM);
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
        int next = raining.nextSetBit(Math.clamp(hourOf(from), 0, hours.size()));
        return next < 0 ? Optional.empty() : Optional.of(window(next));
    }

    double chance(Instant from, Instant until) {
        forwards(from, until);
        long first = hourOf(from);
        long end = hoursBegunBefore(until);
        if (first >= end || from.equals(until)) return 0;
        double dry = 1 - chanceOf(first);
        for (long i = first + 1; i < end; i++) dry *= staysDry(i);
        return 1 - dry;
    }

    private double staysDry(long hour) {
        return isForecast(hour) && hour > 0
                ? staysDry[(int) hour]
                : RainChance.staysDry(persistence, chanceOf(hour - 1), chanceOf(hour));
    }

    private double chanceOf(long hour) {
        return isForecast(hour) ? hours.get((int) hour).rainProbability() : beyond;
    }

    private boolean isForecast(long hour) {
        return hour >= 0 && hour < hours.size();
    }

    /** Each period with one chance counts once, as in {@link #chance}. */
    OddsOfRain odds(Instant from, Instant until) {
        forwards(from, until);
        long first = hourOf(from);
        long end = from.equals(until) ? first : hoursBegunBefore(until);
        return OddsOfRain.of(
                persistence,
                LongStream.range(first, end)
                        .filter(hour -> hour == first || !isToldBefore(hour))
                        .mapToDouble(this::chanceOf)
                        .toArray());
    }

    private boolean isToldBefore(long hour) {
        return hour > 0 && isForecast(hour) && hours.get((int) hour).sharesChanceWith(hours.get((int) hour - 1));
    }

    private static void forwards(Instant from, Instant until) {
        if (until.isBefore(from))
            throw new IllegalArgumentException("a stretch from %s until %s runs backwards".formatted(from, until));
    }

    private TimeWindow window(int hour) {
        Instant start = hours.get(hour).start();
        return new TimeWindow(start, start.plus(HOUR));
    }

    /** The hour that holds the moment, counted from the first of the forecast. In seconds: the planner asks millions of times. */
    private long hourOf(Instant instant) {
        return Math.floorDiv(instant.getEpochSecond() - firstSecond, HOUR.toSeconds());
    }

    private long hoursBegunBefore(Instant instant) {
        long seconds = instant.getEpochSecond() + (instant.getNano() > 0 ? 1 : 0);
        return Math.ceilDiv(seconds - firstSecond, HOUR.toSeconds());
    }
}
