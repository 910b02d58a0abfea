package drylap.forecasts.formats;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What whoever plans by a forecast should know of how it was read; each kind of thing is said once. */
final class Remarks {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final ZoneId zone;
    private final List<String> sentences = new ArrayList<>();
    private final List<Instant> gustsBelowMeans = new ArrayList<>();

    Remarks(ZoneId zone) {
        this.zone = zone;
    }

    void add(String sentence) {
        sentences.add(sentence);
    }

    /** One sentence for however many hours; none for no hour. */
    void add(List<Instant> hours, String what) {
        if (!hours.isEmpty()) add("%s: %s from %s".formatted(what, count(hours.size()), time(hours.getFirst())));
    }

    /** A gust is the most of a wind, so it cannot be below the mean: the mean then stands for it. */
    double gustAtLeast(Instant hour, double gust, double mean) {
        if (gust >= mean) return gust;
        gustsBelowMeans.add(hour);
        return mean;
    }

    String time(Instant instant) {
        return TIME.format(instant.atZone(zone));
    }

    List<String> sentences() {
        List<String> all = new ArrayList<>(sentences);
        if (!gustsBelowMeans.isEmpty())
            all.add("contradiction, gust below the mean wind, which stands for it: %s from %s"
                    .formatted(count(gustsBelowMeans.size()), time(gustsBelowMeans.getFirst())));
        return all;
    }

    private static String count(int hours) {
        return hours == 1 ? "1 hour" : hours + " hours";
    }
}
