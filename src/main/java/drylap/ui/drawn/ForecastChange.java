package drylap.ui.drawn;

import drylap.audit.PlanBreaks;
import drylap.audit.PlanBreaks.Broken;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import drylap.planning.WhyShut;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.weather.Forecast;
import drylap.weather.SiteWeather;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What another forecast of a site does to its walls and to the plan that people work by, from now on. It judges rules of
 * planning and never says that work at height is safe.
 *
 * @param notes what the comparison cannot know
 * @param same walls and tasks of which no hour changes
 * @param breaks visits that the later forecast breaks and the earlier one did not
 * @param mends visits that the earlier forecast broke and the later one does not
 */
public record ForecastChange(
        List<String> notes, List<WallRow> walls, int same, List<VisitRow> breaks, List<VisitRow> mends) {
    /** Hours of a facade for a task, each a line a day. */
    public record WallRow(FacadeId facade, Task task, List<String> opened, List<String> shut, String hours) {}

    public record VisitRow(OpeningId opening, Task task, VisitTime time, String when, String why) {}

    /** Two forecasts of one site, and those of the published visits that lie there. */
    public record Asked(FolderShown shown, Site site, Forecast earlier, Forecast later, List<Visit> published) {}

    public static ForecastChange of(Speech say, Asked asked, Instant now) {
        return new Comparing(say, asked, now).change();
    }

    private static final class Comparing {
        private final Speech say;
        private final FolderShown shown;
        private final Site site;
        private final Forecast earlier;
        private final Forecast later;
        private final List<Visit> published;
        private final JobFolder folder;
        private final TimeWindow span;
        private final Instant now;

        Comparing(Speech say, Asked asked, Instant now) {
            this.say = say;
            shown = asked.shown();
            site = asked.site();
            earlier = asked.earlier();
            later = asked.later();
            published = asked.published();
            // the site alone: a season's folder takes seconds to judge
            folder = shown.folder()
                    .withOpenings(shown.folder().openings().stream()
                            .filter(opening -> opening.facade().site().equals(site.id()))
                            .toList());
            span = span(now);
            this.now = now;
        }

        /** What is past is not looked at; a folder of which everything is past is looked at from its first day, as it is planned. */
        private TimeWindow span(Instant now) {
            Instant first = midnight(shown.firstDay());
            Instant end = midnight(shown.lastDay().plusDays(1));
            Instant minute = now.truncatedTo(ChronoUnit.MINUTES);
            return new TimeWindow(first.isBefore(minute) && minute.isBefore(end) ? minute : first, end);
        }

        private Instant midnight(LocalDate date) {
            return date.atStartOfDay(site.zone()).toInstant();
        }

        ForecastChange change() {
            SiteWeather before = weather(earlier);
            SiteWeather after = weather(later);
            List<WallRow> rows = new ArrayList<>();
            int all = 0;
            for (Facade facade : shown.folder().facades())
                if (facade.id().site().equals(site.id()))
                    for (Task task : Task.values()) {
                        all++;
                        row(facade, task, before, after, rows);
                    }
            var brokenBefore = broken(earlier);
            var brokenAfter = broken(later);
            List<VisitRow> breaks = rows(newly(brokenAfter, brokenBefore), later, after);
            List<VisitRow> mends = rows(newly(brokenBefore, brokenAfter), earlier, before);
            return new ForecastChange(notes(), rows, all - rows.size(), breaks, mends);
        }

        private SiteWeather weather(Forecast forecast) {
            return SiteWeather.of(site, forecast, folder.rules().at(site.id()), span);
        }

        private void row(Facade facade, Task task, SiteWeather before, SiteWeather after, List<WallRow> rows) {
            List<TimeWindow> was = before.openHours(facade).windows(task);
            List<TimeWindow> is = after.openHours(facade).windows(task);
            List<TimeWindow> opened = DayWords.without(is, was);
            List<TimeWindow> shut = DayWords.without(was, is);
            if (opened.isEmpty() && shut.isEmpty()) return;
            rows.add(new WallRow(
                    facade.id(),
                    task,
                    DayWords.days(say, opened, site.zone()),
                    DayWords.days(say, shut, site.zone()),
                    hours(opened, shut)));
        }

        /** Signed in words, so that more and less are told apart without colour. */
        private String hours(List<TimeWindow> opened, List<TimeWindow> shut) {
            String more = say.it("{0} opened", DayWords.hours(DayWords.length(opened)));
            String less = say.it("{0} shut", DayWords.hours(DayWords.length(shut)));
            if (shut.isEmpty()) return more;
            return opened.isEmpty() ? less : more + ", " + less;
        }

        /** The reasons by visit, in the order of their times. */
        private Map<Visit, List<String>> broken(Forecast forecast) {
            Map<Visit, List<String>> whys = new TreeMap<>(Comparator.comparing(Visit::start)
                    .thenComparing(Visit::opening)
                    .thenComparing(Visit::task));
            for (Broken one :
                    PlanBreaks.of(with(forecast), published, span.from()).broken())
                if (one.visit() != null && ahead(one.visit()))
                    whys.computeIfAbsent(one.visit(), _ -> new ArrayList<>())
                            .add(say.it(one.breach().what()));
            return whys;
        }

        private boolean ahead(Visit visit) {
            return !visit.start().isBefore(span.from());
        }

        private JobFolder with(Forecast forecast) {
            List<Forecast> others = shown.folder().forecasts().stream()
                    .filter(one -> !one.site().equals(site.id()))
                    .collect(Collectors.toCollection(ArrayList::new));
            others.add(forecast);
            return folder.withForecasts(others);
        }

        private static Map<Visit, List<String>> newly(Map<Visit, List<String>> is, Map<Visit, List<String>> was) {
            Map<Visit, List<String>> fresh = new LinkedHashMap<>(is);
            fresh.keySet().removeAll(was.keySet());
            return fresh;
        }

        private List<VisitRow> rows(Map<Visit, List<String>> broken, Forecast forecast, SiteWeather weather) {
            WhyShut why = new WhyShut(with(forecast), span.from(), span.until());
            return broken.entrySet().stream()
                    .map(one -> new VisitRow(
                            one.getKey().opening(),
                            one.getKey().task(),
                            VisitTime.of(one.getKey(), site.zone()),
                            "%s, %s"
                                    .formatted(
                                            say.moment(one.getKey().start(), site.zone()),
                                            one.getKey().crew()),
                            why(one.getKey(), one.getValue(), why, weather)))
                    .toList();
        }

        /** The wall, the cause and the hour where it is the wall that is shut; else the rule that is broken. */
        private String why(Visit visit, List<String> rules, WhyShut why, SiteWeather weather) {
            List<TimeWindow> open =
                    weather.openHours(shown.facade(visit.facade())).windows(visit.task());
            boolean stands = open.stream()
                    .anyMatch(window -> !visit.start().isBefore(window.from())
                            && !visit.end().isAfter(window.until()));
            String cause = stands ? "" : why.saying(visit, open).map(say::it).orElse("");
            return cause.isEmpty() ? rules.stream().distinct().collect(Collectors.joining("; ")) : cause;
        }

        private List<String> notes() {
            List<String> notes = new ArrayList<>();
            if (earlier.hours().isEmpty())
                notes.add(say.it("The earlier one tells no hour at all: all counted as open."));
            else if (endsEarly(earlier))
                notes.add(say.it("The earlier forecast ends {0}: hours after it counted as open.", end(earlier)));
            if (later.hours().isEmpty()) notes.add(say.it("The later one tells no hour at all: all count as open."));
            else if (endsEarly(later))
                notes.add(say.it("The later forecast ends {0}: hours after it count as open.", end(later)));
            if (!later.end().isAfter(now)) notes.add(say.it("The later forecast is over."));
            return notes;
        }

        private boolean endsEarly(Forecast forecast) {
            return forecast.end().isBefore(span.until());
        }

        private String end(Forecast forecast) {
            return say.moment(forecast.end(), site.zone());
        }
    }
}
