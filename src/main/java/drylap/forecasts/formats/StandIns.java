package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeSet;

/** What stands in for values that a source leaves out, always on the safe side and always remarked. */
final class StandIns {
    /** Longer gaps end the forecast: what is guessed over half a day is no forecast. */
    private static final int LONGEST_GAP_H = 3;
    /** Of a gust of seconds over a mean of minutes in open country (common practice, no source). */
    private static final double GUST_OVER_MEAN = 1.6;
    /** The least rain that counts as wet, where only the amount is told. */
    private static final double WET_MM = 0.1;

    private static final double MOST_GUST = 150;

    private final Hours hours;
    private final Remarks remarks;

    StandIns(Hours hours, Remarks remarks) {
        this.hours = hours;
        this.remarks = remarks;
    }

    /** A gap of up to three hours gets the worse of the values at its two ends. */
    void bridgeShortGaps() {
        TreeSet<Instant> bridged = new TreeSet<>();
        for (Quantity quantity : Quantity.values()) bridge(quantity, bridged);
        remarks.add(List.copyOf(bridged), ForecastWords.GAP);
    }

    private void bridge(Quantity quantity, TreeSet<Instant> bridged) {
        NavigableMap<Instant, Hours.Told> told = hours.of(quantity);
        for (Map.Entry<Instant, Hours.Told> entry : List.copyOf(told.entrySet())) {
            Instant before = entry.getKey();
            Map.Entry<Instant, Hours.Told> after = told.higherEntry(before);
            if (after == null) return;
            long gap = Duration.between(before, after.getKey()).toHours() - 1;
            if (gap < 1 || gap > LONGEST_GAP_H) continue;
            double value =
                    worse(quantity, entry.getValue().value(), after.getValue().value());
            for (Instant hour = before.plus(Hours.HOUR); hour.isBefore(after.getKey()); hour = hour.plus(Hours.HOUR)) {
                told.put(hour, new Hours.Told(value, hour));
                hours.all().add(hour);
                bridged.add(hour);
            }
        }
    }

    private static double worse(Quantity quantity, double before, double after) {
        return switch (quantity) {
            case RAIN, CHANCE, WIND, GUST, HUMIDITY -> Math.max(before, after);
            case TEMPERATURE -> Math.min(before, after);
            case WIND_FROM -> before;
        };
    }

    /** Without a chance the amount alone decides: wet is sure, dry is sure. */
    void chancesFromAmounts() {
        List<Instant> stoodIn = new ArrayList<>();
        hours.of(Quantity.RAIN).forEach((hour, rain) -> {
            double chance = rain.value() >= WET_MM ? 100 : 0;
            if (hours.of(Quantity.CHANCE).putIfAbsent(hour, new Hours.Told(chance, hour)) == null) stoodIn.add(hour);
        });
        remarks.add(stoodIn, ForecastWords.NO_CHANCE);
    }

    void gustsFromMeans() {
        List<Instant> stoodIn = new ArrayList<>();
        hours.of(Quantity.WIND).forEach((hour, mean) -> {
            double gust = Math.min(MOST_GUST, GUST_OVER_MEAN * mean.value());
            if (hours.of(Quantity.GUST).putIfAbsent(hour, new Hours.Told(gust, hour)) == null) stoodIn.add(hour);
        });
        remarks.add(stoodIn, ForecastWords.NO_GUST);
    }

    /** Nothing is worked out from it yet; the damp side stands where it is not told. */
    void humidity() {
        for (Instant hour : hours.all()) hours.of(Quantity.HUMIDITY).putIfAbsent(hour, new Hours.Told(100, hour));
    }
}
