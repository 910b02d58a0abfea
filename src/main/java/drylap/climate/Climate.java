package drylap.climate;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How often it rains at a site where no forecast reaches, and how much in a wet hour.
 *
 * @param words where that comes from
 * @param assumed nothing of the site stands behind it, for some month at least
 * @param shape of the gamma distribution of what falls in a wet hour beyond the least that counts
 */
public record Climate(String words, boolean assumed, double shape, List<Month> months) {
    /**
     * @param wet the share of wet hours, 0 to 1
     * @param lostDays the chance that cold or gusts shut installs for a whole day
     */
    public record Month(double wet, double millimetres, double lostDays) {}

    /** A site with less of a record than this says nothing about its climate. */
    private static final int LEAST_HOURS = 24 * 14;

    private static final int LEAST_WET_HOURS = 20;
    /** Hourly amounts are skewed more than exponentially; common practice, no source. */
    private static final double USUAL_SHAPE = 0.75;

    /** In a wet hour; assumption. */
    private static final double USUAL_MM = 0.8;

    public Climate {
        months = List.copyOf(months);
    }

    public Month in(int month) {
        return months.get(month - 1);
    }

    /** From normals where there are any, else from the hours that the site's forecasts have told, else an assumption. */
    public static Climate of(SiteId site, List<MonthlyNormals> normals, Forecast told, Rules rules) {
        double shape = shape(told, rules);
        Map<Integer, Month> published = published(site, normals, rules.value(Rule.RAIN_PERSISTENCE));
        if (!published.isEmpty()) return named(published, shape, rules);
        int hours = told.hours().size();
        if (hours < LEAST_HOURS) return new Climate(ClimateSource.ASSUMED.with(0), true, shape, alike(assumed(rules)));
        return new Climate(ClimateSource.FORECASTS.with(hours / 24), false, shape, alike(counted(told, rules)));
    }

    private static Climate named(Map<Integer, Month> published, double shape, Rules rules) {
        int missing = 12 - published.size();
        String words = ClimateSource.lacking(missing).with(missing);
        List<Month> months = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> published.getOrDefault(month, assumed(rules)))
                .toList();
        return new Climate(words, missing > 0, shape, months);
    }

    private static Map<Integer, Month> published(SiteId site, List<MonthlyNormals> normals, double rho) {
        Map<Integer, Month> months = new HashMap<>();
        boolean own = normals.stream().anyMatch(one -> site.equals(one.site()));
        for (MonthlyNormals one : normals)
            if (own ? site.equals(one.site()) : one.site() == null)
                months.putIfAbsent(
                        one.month(), new Month(one.wetHours(rho), one.millimetresAnHour(rho), one.lostDays()));
        return months;
    }

    private static Month assumed(Rules rules) {
        return new Month(rules.value(Rule.BEYOND_RAIN_P), USUAL_MM, 0);
    }

    private static Month counted(Forecast told, Rules rules) {
        double wet = told.hours().stream()
                .mapToDouble(ForecastHour::rainProbability)
                .average()
                .orElse(rules.value(Rule.BEYOND_RAIN_P));
        double millimetres = wetAmounts(told, rules).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(USUAL_MM);
        return new Month(wet, millimetres, 0);
    }

    /** By the method of moments, from what falls beyond the least that counts. */
    private static double shape(Forecast told, Rules rules) {
        double least = rules.value(Rule.RAIN_MM);
        double[] excess = wetAmounts(told, rules).stream()
                .mapToDouble(amount -> amount - least)
                .toArray();
        if (excess.length < LEAST_WET_HOURS) return USUAL_SHAPE;
        double mean = java.util.Arrays.stream(excess).average().orElseThrow();
        double variance = java.util.Arrays.stream(excess)
                .map(amount -> (amount - mean) * (amount - mean))
                .average()
                .orElseThrow();
        return variance > 0 && mean > 0 ? Math.clamp(mean * mean / variance, 0.3, 5) : USUAL_SHAPE;
    }

    private static List<Double> wetAmounts(Forecast told, Rules rules) {
        double least = rules.value(Rule.RAIN_MM);
        return told.hours().stream()
                .map(ForecastHour::rainMm)
                .filter(amount -> amount >= least && amount > 0)
                .toList();
    }

    private static List<Month> alike(Month month) {
        return java.util.Collections.nCopies(12, month);
    }
}
