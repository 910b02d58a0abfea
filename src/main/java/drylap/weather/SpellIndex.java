package drylap.weather;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Driving rain of many years on an airfield's wall by ISO 15927-3, litres per square metre.
 *
 * @param years whole ones that were looked at
 * @param annual the mean of a year
 * @param spell the worst spell of a year, as it comes about once in three years: the 67th percentile of the yearly worst
 */
public record SpellIndex(int years, double annual, double spell) {
    /** From memory of the standard, which would rather have 20 to 30. */
    static final int FEWEST_YEARS = 10;

    private static final double PERCENTILE = 0.67;
    /** A year with a month of gaps is no whole one; planning choice of this project. */
    private static final int WHOLE_YEAR_H = 8000;

    /** Nothing where there are fewer than ten whole years: a forecast has no spell index. A spell belongs to the year it begins in. */
    public static Optional<SpellIndex> of(List<ForecastHour> hours, double azimuthDeg) {
        Map<Integer, Double> worst = new TreeMap<>();
        hours.stream()
                .collect(Collectors.groupingBy(hour -> year(hour.start()), Collectors.counting()))
                .forEach((year, told) -> {
                    if (told >= WHOLE_YEAR_H) worst.put(year, 0.0);
                });
        if (worst.size() < FEWEST_YEARS) return Optional.empty();
        double sum = hours.stream()
                .filter(hour -> worst.containsKey(year(hour.start())))
                .mapToDouble(hour -> DrivingRain.hourly(hour, azimuthDeg))
                .sum();
        for (DrivingRain.Spell spell : DrivingRain.timedSpells(hours, azimuthDeg))
            worst.computeIfPresent(year(spell.start()), (_, most) -> Math.max(most, spell.litres()));
        return Optional.of(new SpellIndex(worst.size(), sum / worst.size(), percentile(worst)));
    }

    /** Between the two nearest of the ordered years in proportion. */
    private static double percentile(Map<Integer, Double> worst) {
        double[] ordered = worst.values().stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        double place = PERCENTILE * (ordered.length - 1);
        int below = (int) place;
        return ordered[below] + (place - below) * (ordered[below + 1] - ordered[below]);
    }

    private static int year(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC).getYear();
    }
}
