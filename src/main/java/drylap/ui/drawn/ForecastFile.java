package drylap.ui.drawn;

import drylap.forecasts.ForecastProblem;
import drylap.forecasts.ForecastWords;
import drylap.forecasts.ReadForecast;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * A forecast file before it is used.
 *
 * @param over whether its last hour has passed
 */
public record ForecastFile(String summary, List<Day> days, List<String> remarks, boolean over) {
    /** @param rainHours hours that count as rain by the rules of the site */
    public record Day(String day, int hours, String rain, int rainHours, String gust, String temperature) {}

    /** Where in the file something is wrong; a dash where a whole line or the whole file is meant. */
    public record Wrong(String line, String column, String wrong, String accepted) {
        private static final String LINE = "line ";

        public static Wrong of(Speech say, ForecastProblem problem) {
            String wrong = say.it(ForecastWords.read(problem.wrong()));
            String accepted = say.it(ForecastWords.read(problem.accepted()));
            if (!problem.where().startsWith(LINE))
                return new Wrong(
                        "\u2013", "\u2013", say.it("{0} {1}", ForecastWords.read(problem.where()), wrong), accepted);
            String[] where = problem.where().substring(LINE.length()).split(", ", 2);
            return new Wrong(where[0], where.length > 1 ? where[1] : "\u2013", wrong, accepted);
        }
    }

    public static ForecastFile of(Speech say, ReadForecast read, Site site, Rules rules, Instant now) {
        List<ForecastHour> hours = read.forecast().hours();
        ZoneId zone = site.zone();
        var byDay = hours.stream()
                .collect(Collectors.groupingBy(
                        hour -> hour.start().atZone(zone).toLocalDate(), TreeMap::new, Collectors.toList()));
        Instant end = read.forecast().end();
        return new ForecastFile(
                say.it(
                        "{0, plural, one {# hour} other {# hours}}, from {1} to {2}",
                        hours.size(), say.moment(hours.getFirst().start(), zone), say.moment(end, zone)),
                byDay.entrySet().stream()
                        .map(day -> day(say, day.getKey(), day.getValue(), rules))
                        .toList(),
                read.remarks().stream().map(ForecastWords::read).map(say::it).toList(),
                !end.isAfter(now));
    }

    private static Day day(Speech say, LocalDate date, List<ForecastHour> hours, Rules rules) {
        int wet = (int) hours.stream()
                .filter(hour -> hour.rainMm() >= rules.value(Rule.RAIN_MM)
                        && hour.rainProbability() >= rules.value(Rule.RAIN_P))
                .count();
        return new Day(
                say.day(date),
                hours.size(),
                "%s mm"
                        .formatted(one(
                                hours.stream().mapToDouble(ForecastHour::rainMm).sum())),
                wet,
                "%s m/s".formatted(one(most(hours, ForecastHour::gustMs))),
                say.it(
                        "{0} to {1} °C",
                        one(-most(hours, hour -> -hour.temperatureC())), one(most(hours, ForecastHour::temperatureC))));
    }

    private static double most(List<ForecastHour> hours, ToDoubleFunction<ForecastHour> value) {
        return hours.stream().mapToDouble(value).max().orElse(0);
    }

    /** Without a zero that is below nought. */
    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", Math.round(value * 10) / 10.0 + 0.0);
    }
}
