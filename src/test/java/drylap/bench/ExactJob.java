package drylap.bench;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.LabourRow;
import drylap.planning.LedgerTerm;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A job folder of one site in minutes from the first shift's start, as an exact model wants it; shares nothing with the planner. */
final class ExactJob {
    /** One task of one opening. */
    record Work(int index, Opening opening, Task task, int minutes, LabourRow labour) {
        int setupAfter(Work before) {
            if (!before.opening.facade().equals(opening.facade())) return labour.setupFacadeMin();
            return before.opening.level() == opening.level() ? 0 : labour.setupLevelMin();
        }
    }

    /** A crew's shift. */
    record Day(Crew crew, Shift shift, int date, int from, int end, int limit, int toSite, int fromSite) {}

    /** Minutes, both ends included. */
    record Stretch(int first, int last) {}

    final JobFolder folder;
    final Instant zero;
    final int horizon;
    final List<Work> works;
    final List<Day> days;
    final SiteWeather weather;

    ExactJob(JobFolder folder) {
        if (folder.sites().size() != 1 || !folder.published().isEmpty())
            throw new IllegalArgumentException("the exact model knows one site and no published plan");
        this.folder = folder;
        zero = folder.shifts().stream()
                .map(Shift::startsAt)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        horizon = folder.shifts().stream()
                .mapToInt(shift -> minute(shift.limit()))
                .max()
                .orElseThrow();
        works = works();
        days = folder.shifts().stream().map(this::day).toList();
        Site site = folder.sites().getFirst();
        Forecast forecast = folder.forecasts().stream().findFirst().orElseGet(() -> Forecast.none(site.id()));
        weather = SiteWeather.of(
                site, forecast, folder.rules().at(site.id()), new TimeWindow(zero, zero.plusSeconds(60L * horizon)));
    }

    int minute(Instant instant) {
        return (int) Duration.between(zero, instant).toMinutes();
    }

    Instant at(long minute) {
        return zero.plus(minute, ChronoUnit.MINUTES);
    }

    int weight(LedgerTerm term) {
        return folder.rules().everywhere().whole(term.weight());
    }

    private List<Work> works() {
        List<Work> all = new ArrayList<>();
        for (Opening opening : folder.openings())
            for (Task task : opening.tasks())
                all.add(new Work(
                        all.size(),
                        opening,
                        task,
                        folder.labour().minutes(opening, task),
                        folder.labour().row(task, opening.method())));
        return List.copyOf(all);
    }

    private Day day(Shift shift) {
        Crew crew = folder.crews().stream()
                .filter(one -> one.id().equals(shift.crew()))
                .findFirst()
                .orElseThrow();
        Site site = folder.sites().getFirst();
        String base = crew.id().value();
        String place = site.id().value();
        return new Day(
                crew,
                shift,
                (int) ChronoUnit.DAYS.between(zero.atZone(shift.zone()).toLocalDate(), shift.date()),
                minute(shift.startsAt()),
                minute(shift.endsAt()),
                minute(shift.limit()),
                folder.travel().minutes(base, crew.base(), place, site.place()),
                folder.travel().minutes(place, site.place(), base, crew.base()));
    }

    static boolean able(Work work, Crew crew) {
        return crew.trade() == work.task.trade()
                && crew.trainedFor(work.opening().method());
    }

    /** When an install that was complete before had ended; nothing if it is still to do. */
    @Nullable
    Integer installedAt(Opening opening) {
        if (!opening.installed()) return null;
        return opening.doneAt() == null ? 0 : minute(opening.doneAt());
    }

    /** Starts at which a work lies in open hours, with the way there and back inside the shift and not across its break. */
    List<Stretch> starts(Work work, Day day) {
        int earliest = day.from() + day.toSite();
        if (work.task() == Task.INSTALL)
            earliest = Math.max(
                    earliest,
                    minute(work.opening()
                            .deliveredOn()
                            .atStartOfDay(folder.sites().getFirst().zone())
                            .toInstant()));
        int latest = day.limit() - day.fromSite() - work.minutes();
        List<Stretch> starts = new ArrayList<>();
        for (Stretch open : open(work)) {
            int first = Math.max(earliest, open.first());
            int last = Math.min(latest, open.last());
            LocalTime rest = day.shift().breakStart();
            LocalTime on = day.shift().breakEnd();
            if (rest == null || on == null) add(starts, first, last);
            else {
                add(starts, first, Math.min(last, minute(day.shift().at(rest)) - work.minutes()));
                add(starts, Math.max(first, minute(day.shift().at(on))), last);
            }
        }
        return starts;
    }

    /** Starts at which a work lies in open hours. */
    List<Stretch> open(Work work) {
        List<Stretch> starts = new ArrayList<>();
        for (TimeWindow window : weather.openHours(facade(work.opening())).windows(work.task()))
            add(starts, minute(window.from()), minute(window.until()) - work.minutes());
        return starts;
    }

    private Facade facade(Opening opening) {
        return folder.facades().stream()
                .filter(one -> one.id().equals(opening.facade()))
                .findFirst()
                .orElseThrow();
    }

    private static void add(List<Stretch> starts, int first, int last) {
        if (first <= last) starts.add(new Stretch(first, last));
    }

    /** Thousandths of chance of rain during a work that starts at a minute. */
    int rain(Work work, int start) {
        return (int) Math.round(1000 * weather.chanceOfRain(at(start), at(start + work.minutes())));
    }
}
