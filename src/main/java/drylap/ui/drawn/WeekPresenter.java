package drylap.ui.drawn;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.Week.CrewDay;
import drylap.ui.drawn.Week.CrewRow;
import drylap.ui.drawn.Week.Day;
import drylap.ui.drawn.Week.SiteSky;
import drylap.ui.drawn.Week.Stretch;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Lays a folder's shifts and its plan's visits out as a week sheet. */
public final class WeekPresenter {
    private record CrewDate(CrewId crew, LocalDate date) {}

    private static final int MORNING = 6;
    private static final int EVENING = 18;

    private final Speech say;
    private final FolderShown shown;
    private final WeekChoice choice;
    private final Map<CrewDate, List<Visit>> visits;
    private final Map<CrewDate, Shift> shifts;
    private final BlocksOfDay blocks;

    private WeekPresenter(Speech say, FolderShown shown, WeekChoice choice) {
        this.say = say;
        this.shown = shown;
        this.choice = choice;
        visits = shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .sorted(Comparator.comparing(Visit::start))
                .collect(Collectors.groupingBy(visit -> new CrewDate(visit.crew(), visit.date())));
        shifts = shown.folder().shifts().stream()
                .collect(Collectors.toMap(shift -> new CrewDate(shift.crew(), shift.date()), shift -> shift));
        blocks = new BlocksOfDay(say, shown);
    }

    static Week week(FolderShown shown) {
        return week(Speech.ENGLISH, shown, WeekChoice.ALL);
    }

    /** What of it was chosen; visits of the chosen crews that are left out are counted. */
    public static Week week(Speech say, FolderShown shown, WeekChoice choice) {
        return new WeekPresenter(say, shown, choice).week();
    }

    private Week week() {
        List<LocalDate> dates =
                shown.firstDay().datesUntil(shown.lastDay().plusDays(1)).toList();
        List<Shift> all = shown.folder().shifts();
        int from = all.stream().mapToInt(shift -> shift.start().getHour()).min().orElse(MORNING);
        int until = all.stream()
                .mapToInt(shift -> Math.ceilDiv(clock(shift).minute(shift.limit()), 60))
                .max()
                .orElse(EVENING);
        return new Week(
                from,
                until,
                dates.stream().map(this::day).toList(),
                choice.crews(shown).stream().map(crew -> row(crew, dates)).toList());
    }

    private Day day(LocalDate date) {
        return new Day(
                date.toString(),
                say.weekday(date),
                say.date(date),
                shown.folder().sites().stream()
                        .filter(choice::admits)
                        .map(site -> siteSky(site, date))
                        .toList());
    }

    private SiteSky siteSky(Site site, LocalDate date) {
        return new SiteSky(
                site.id().value(),
                site.name(),
                SkyOfDay.of(shown.weather(site.id()), new DayClock(date, site.zone()), 0, DayClock.MINUTES));
    }

    private CrewRow row(Crew crew, List<LocalDate> dates) {
        return new CrewRow(
                crew.id().value(),
                Task.of(crew.trade()).code(),
                CrewWords.of(say, crew),
                dates.stream().map(date -> crewDay(crew, date)).toList());
    }

    private CrewDay crewDay(Crew crew, LocalDate date) {
        CrewDate key = new CrewDate(crew.id(), date);
        Optional<Shift> shift = Optional.ofNullable(shifts.get(key));
        List<Visit> today = visits.getOrDefault(key, List.of());
        List<Visit> admitted = today.stream().filter(choice::admits).toList();
        DayClock clock = new DayClock(date, crew.zone());
        return new CrewDay(
                date.toString(),
                shift.map(s -> new Stretch(clock(s).minute(s.startsAt()), clock(s).minute(s.limit())))
                        .orElse(null),
                shift.map(WeekPresenter::rest).orElse(null),
                SkyOfDay.overTheCrew(shown, today, clock),
                blocks.of(admitted, clock),
                today.size() - admitted.size(),
                shift.filter(this::isBeforeThePlan).isPresent() ? say.it("past") : say.it("free"));
    }

    /** A proposal begins with the hour in which it was made, and says nothing of the work before. */
    private boolean isBeforeThePlan(Shift shift) {
        return shown.plan().filter(plan -> !shift.limit().isAfter(plan.start())).isPresent();
    }

    private static @Nullable Stretch rest(Shift shift) {
        if (shift.breakStart() == null || shift.breakEnd() == null) return null;
        return new Stretch(
                clock(shift).minute(shift.at(shift.breakStart())), clock(shift).minute(shift.at(shift.breakEnd())));
    }

    private static DayClock clock(Shift shift) {
        return new DayClock(shift.date(), shift.zone());
    }
}
