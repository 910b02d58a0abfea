package drylap.ui.drawn;

import java.util.List;

/** One facade's rain, dark and open hours. Times are minutes from the strip's start. */
public record Strip(
        String title,
        String heading,
        long length,
        List<Midnight> days,
        List<RainHour> rain,
        List<Stretch> dark,
        long forecastEnd,
        List<TaskHours> tasks) {
    public record Midnight(long from, String label) {}

    /** @param raining whether the contractor's rules count it as rain */
    public record RainHour(long from, double mm, double probability, boolean raining) {}

    public record Stretch(long from, long until) {}

    /** @param words the same windows to be read aloud, one line a day */
    public record TaskHours(String task, List<Stretch> spans, List<String> words) {}
}
