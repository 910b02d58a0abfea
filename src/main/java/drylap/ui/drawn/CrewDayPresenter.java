package drylap.ui.drawn;

import drylap.kernel.CrewId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import drylap.speech.Speech;
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

    private final Speech say;
    private final FolderShown shown;
    private final Instant now;

    private CrewDayPresenter(Speech say, FolderShown shown, Instant now) {
        this.say = say;
        this.shown = shown;
        this.now = now;
    }

    public static CrewDay day(Speech say, FolderShown shown, CrewId crew, LocalDate date, Instant now) {
        return new CrewDayPresenter(say, shown, now).day(crew, date);
    }

    private CrewDay day(CrewId crew, LocalDate date) {
        List<Stop> stops = new ArrayList<>();
        Visit before = null;
        for (Visit visit : visits(shown, crew, date)) {
            stops.add(stop(before, visit));
            before = visit;
        }
        return new CrewDay(
                say.it("{0}, crew {1}", say.day(date), crew),
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
        if (shown.plan().isEmpty()) return say.it("No plan is published yet; the scheduler publishes one.");
        return next(crew, date)
                .map(visit -> say.it(
                        "The published plan sends this crew nowhere on this day; next on {0}, {1}.",
                        say.day(visit.date()), shown.title(visit.facade())))
                .orElseGet(() ->
                        say.it("The published plan sends this crew nowhere on this day; nor on any day after it."));
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
                moves(before, visit)
                        ? shown.site(visit.facade().site()).address().inOneLine()
                        : "",
                say.it("{0}, level {1}", visit.facade().facade(), visit.level()),
                say.clock(visit.start(), zone),
                say.clock(visit.end(), zone),
                say.it(Words.task(visit.task())),
                visit.task() == Task.TEST,
                say.it(Words.work(visit.task(), opening)),
                WallPresenter.glyph(say, opening),
                before == null ? "" : way(before, visit),
                done,
                done ? List.of() : whyNot(opening, visit, zone));
    }

    private String way(Visit before, Visit visit) {
        long minutes = Duration.between(before.end(), visit.start()).toMinutes();
        if (moves(before, visit))
            return say.it(
                    "{0} min to go to {1}",
                    minutes, shown.site(visit.facade().site()).name());
        return minutes < LONG_GAP_MINUTES ? "" : say.it("{0} min between, for setting up, rest or waiting", minutes);
    }

    private static boolean moves(@Nullable Visit before, Visit visit) {
        return before == null || !before.facade().site().equals(visit.facade().site());
    }

    private List<String> whyNot(Opening opening, Visit visit, ZoneId zone) {
        List<String> why = new ArrayList<>();
        if (visit.task() == Task.INSTALL && opening.deliveredOn().isAfter(visit.date()))
            why.add(say.it("window not on site before {0}", say.day(opening.deliveredOn())));
        opening.tasks().stream()
                .takeWhile(task -> task != visit.task())
                .findFirst()
                .ifPresent(
                        first -> why.add(say.it("waits for another trade: {0} first", Saying.of(Words.task(first)))));
        Instant from = now.isAfter(visit.start()) ? now : visit.start();
        shown.weather(opening.facade().site())
                .nextRain(from)
                .filter(rain -> rain.from().isBefore(visit.end()))
                .ifPresent(rain -> why.add(say.it("rain forecast from {0}", say.clock(rain.from(), zone))));
        return List.copyOf(why);
    }
}
