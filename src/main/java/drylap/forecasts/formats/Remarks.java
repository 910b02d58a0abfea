package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
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
    void add(List<Instant> hours, ForecastWords what) {
        if (!hours.isEmpty()) add(sentence(hours, what));
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
        if (!gustsBelowMeans.isEmpty()) all.add(sentence(gustsBelowMeans, ForecastWords.GUST_BELOW_MEAN));
        return all;
    }

    private String sentence(List<Instant> hours, ForecastWords what) {
        return what.with(count(hours.size()), time(hours.getFirst()));
    }

    private static String count(int hours) {
        return hours == 1 ? ForecastWords.ONE_HOUR.with() : ForecastWords.HOURS.with(hours);
    }
}
