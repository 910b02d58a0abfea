package drylap.ui.drawn;

import drylap.kernel.CrewId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.ui.drawn.CrewDay.Stop;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lays one day of one crew out, stop by stop. */
public final class CrewDayPresenter {
    private static final int LONG_GAP_MINUTES = 1;

    private final FolderShown shown;
    private final Instant now;

    private CrewDayPresenter(FolderShown shown, Instant now) {
        this.shown = shown;
        this.now = now;
    }

    public static CrewDay day(FolderShown shown, CrewId crew, LocalDate date, Instant now) {
        return new CrewDayPresenter(shown, now).day(crew, date);
    }

    private CrewDay day(CrewId crew, LocalDate date) {
        List<Stop> stops = new ArrayList<>();
        Visit before = null;
        for (Visit visit : visits(shown, crew, date)) {
            stops.add(stop(before, visit));
            before = visit;
        }
        return new CrewDay(
                "%s %s, crew %s".formatted(Words.weekday(date), Words.date(date), crew),
                List.copyOf(stops),
                stops.isEmpty() ? nothing(crew, date) : "");
    }

    /** The crew's visits of the day, first ones first. */
    static List<Visit> visits(FolderShown shown, CrewId crew, LocalDate date) {
        return shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .filter(visit -> visit.crew().equals(crew) && visit.date().equals(date))
                .sorted(Comparator.comparing(Visit::start))
                .toList();
    }

    private String nothing(CrewId crew, LocalDate date) {
        if (shown.plan().isEmpty()) return "No plan is published yet; the scheduler publishes one.";
        return "The published plan sends this crew nowhere on this day; "
                + next(crew, date)
                        .map(visit -> "next on %s %s, %s."
                                .formatted(
                                        Words.weekday(visit.date()),
                                        Words.date(visit.date()),
                                        shown.title(visit.facade())))
                        .orElse("nor on any day after it.");
    }

    private Optional<Visit> next(CrewId crew, LocalDate date) {
        return shown.plan().stream()
                .flatMap(plan -> plan.visits().stream())
                .filter(visit -> visit.crew().equals(crew) && visit.date().isAfter(date))
                .min(Comparator.comparing(Visit::start));
    }

    private Stop stop(@Nullable Visit before, Visit visit) {
        var opening = shown.opening(visit.opening());
        ZoneId zone = shown.site(visit.facade().site()).zone();
        boolean done = !opening.tasks().contains(visit.task());
        return new Stop(
                opening.id().value(),
                shown.site(visit.facade().site()).name(),
                "%s, level %d".formatted(visit.facade().facade(), visit.level()),
                Words.clock(visit.start(), zone),
                Words.clock(visit.end(), zone),
                Words.task(visit.task()),
                visit.task() == Task.TEST,
                Words.work(visit.task(), opening),
                WallPresenter.glyph(opening),
                before == null ? "" : way(before, visit),
                done,
                done ? List.of() : whyNot(opening, visit, zone));
    }

    private String way(Visit before, Visit visit) {
        long minutes = Duration.between(before.end(), visit.start()).toMinutes();
        boolean moves = !before.facade().site().equals(visit.facade().site());
        if (moves)
            return "%d min to go to %s"
                    .formatted(minutes, shown.site(visit.facade().site()).name());
        return minutes < LONG_GAP_MINUTES ? "" : "%d min between, for setting up, rest or waiting".formatted(minutes);
    }

    private List<String> whyNot(Opening opening, Visit visit, ZoneId zone) {
        List<String> why = new ArrayList<>();
        if (visit.task() == Task.INSTALL && opening.deliveredOn().isAfter(visit.date()))
            why.add("window not on site before %s %s"
                    .formatted(Words.weekday(opening.deliveredOn()), Words.date(opening.deliveredOn())));
        opening.tasks().stream()
                .takeWhile(task -> task != visit.task())
                .findFirst()
                .ifPresent(first -> why.add("waits for another trade: %s first".formatted(Words.task(first))));
        Instant from = now.isAfter(visit.start()) ? now : visit.start();
        shown.weather(opening.facade().site())
                .nextRain(from)
                .filter(rain -> rain.from().isBefore(visit.end()))
                .ifPresent(rain -> why.add("rain forecast from %s".formatted(Words.clock(rain.from(), zone))));
        return List.copyOf(why);
    }
}
