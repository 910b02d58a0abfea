package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;

/** Values of one hour that cannot both be right. They are told, and stay as the source gave them: which is wrong nobody knows. */
final class Contradictions {
    /** The least amount that Open-Meteo's chance speaks of; the US service speaks of 0.254 mm in a period. */
    private static final double RAIN_MM = 0.1;

    private static final double NEARLY_SURE = 0.9;

    private Contradictions() {}

    static void remark(List<ForecastHour> hours, Remarks remarks) {
        remarks.add(
                starts(hours, hour -> hour.rainMm() >= RAIN_MM && hour.rainProbability() == 0),
                ForecastWords.RAIN_WITHOUT_CHANCE);
        remarks.add(
                starts(hours, hour -> hour.rainMm() == 0 && hour.rainProbability() >= NEARLY_SURE),
                ForecastWords.CHANCE_WITHOUT_RAIN);
    }

    private static List<Instant> starts(List<ForecastHour> hours, Predicate<ForecastHour> which) {
        return hours.stream().filter(which).map(ForecastHour::start).toList();
    }
}
