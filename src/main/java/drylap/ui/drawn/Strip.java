package drylap.ui.drawn;

import java.util.List;

/** One facade's sky, dark and open hours. Times are minutes from the strip's start. */
public record Strip(
        String title,
        String heading,
        long length,
        List<Midnight> days,
        Sky sky,
        Limits limits,
        List<Stretch> dark,
        long forecastEnd,
        List<TaskHours> tasks) {
    public record Midnight(long from, String label) {}

    /**
     * The forecast's hours, one value each from the first on; rounded, since a page holds many strips.
     *
     * @param from the start of the first
     * @param rain mm
     * @param chance percent
     * @param raining whether the contractor's rules count it as rain
     * @param wall driving rain on this wall, litres per square metre of an open airfield
     * @param wetting whether the wall must dry after it
     * @param gust m/s
     * @param temperature °C
     */
    public record Sky(
            long from,
            List<Double> rain,
            List<Integer> chance,
            List<Boolean> raining,
            List<Double> wall,
            List<Boolean> wetting,
            List<Double> gust,
            List<Double> temperature) {}

    /** From where on the install is stopped, and an hour counts as rain, by the rules of the site. */
    public record Limits(int chance, double gust, double cold) {}

    public record Stretch(long from, long until) {}

    /** @param words the same windows to be read aloud, one line a day */
    public record TaskHours(String task, List<Stretch> spans, List<String> words) {}
}
