package drylap.risk;

import drylap.climate.MinuteAxis;
import drylap.kernel.Task;
import drylap.risk.RiskReport.ClimateUsed;
import drylap.risk.RiskReport.CrewDayRisk;
import drylap.risk.RiskReport.DayChance;
import drylap.risk.RiskReport.DayRisk;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.risk.RiskReport.Totals;
import drylap.sites.Facade;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes the report of what came of the trials. */
final class Reporting {
    private static final double MINUTES = 60;

    private final JobBook book;
    private final Runs runs;

    Reporting(JobBook book, Runs runs) {
        this.book = book;
        this.runs = runs;
    }

    RiskReport report(long seed) {
        List<CrewDayRisk> crewDays = crewDays();
        return new RiskReport(
                runs.trials,
                seed,
                book.axis.at(book.start),
                handovers(),
                openings(),
                crewDays,
                days(),
                new Totals(
                        Figure.mean(runs.covers),
                        Figure.mean(runs.wetOpenings),
                        crewDays.size(),
                        Figure.mean(runs.crewDays)),
                climates());
    }

    private List<Handover> handovers() {
        return IntStream.range(0, runs.handover.length)
                .filter(wall -> runs.handover[wall][0] >= 0)
                .mapToObj(this::handover)
                .sorted(Comparator.comparing(Handover::planned).thenComparing(Handover::facade))
                .toList();
    }

    private Handover handover(int wall) {
        Facade facade = book.skies.walls().get(wall);
        int[] sorted = runs.handover[wall].clone();
        Arrays.sort(sorted);
        int never = (int)
                Arrays.stream(sorted).filter(end -> end >= MinuteAxis.NEVER).count();
        return new Handover(
                facade.id(),
                facade.handoverDue(),
                book.axis.at(planned(wall)),
                DateFigure.of(sorted, 0.5, book.axis),
                DateFigure.of(sorted, 0.8, book.axis),
                DateFigure.of(sorted, 0.9, book.axis),
                inTime(sorted, facade, wall),
                unplanned(facade),
                never,
                spread(sorted, wall));
    }

    private int planned(int wall) {
        return Arrays.stream(book.jobs)
                .filter(job -> job.wall == wall && job.task == Task.CLAD)
                .mapToInt(job -> job.planned + job.minutes)
                .max()
                .orElseThrow();
    }

    private int unplanned(Facade facade) {
        long toDo = book.folder.openings().stream()
                .filter(opening -> opening.facade().equals(facade.id()))
                .filter(opening -> opening.tasks().contains(Task.CLAD))
                .count();
        long planned = Arrays.stream(book.jobs)
                .filter(job -> job.task == Task.CLAD && job.facade().equals(facade.id()))
                .count();
        return Math.toIntExact(toDo - planned);
    }

    private @Nullable Figure inTime(int[] sorted, Facade facade, int wall) {
        LocalDate due = facade.handoverDue();
        if (due == null) return null;
        int limit = book.axis.floor(due.plusDays(1).atStartOfDay(zoneOf(wall)).toInstant());
        return Figure.chance(
                (int) Arrays.stream(sorted).filter(end -> end <= limit).count(), sorted.length);
    }

    private List<DayChance> spread(int[] sorted, int wall) {
        Map<LocalDate, Integer> counts = new TreeMap<>();
        for (int end : sorted)
            if (end < MinuteAxis.NEVER)
                counts.merge(book.axis.at(end).atZone(zoneOf(wall)).toLocalDate(), 1, Integer::sum);
        return counts.entrySet().stream()
                .map(day -> new DayChance(day.getKey(), (double) day.getValue() / sorted.length))
                .toList();
    }

    private ZoneId zoneOf(int wall) {
        return book.folder
                .sites()
                .get(book.skies.site(book.skies.walls().get(wall).id().site()))
                .zone();
    }

    private List<OpeningRisk> openings() {
        return Arrays.stream(book.jobs)
                .filter(job -> job.task == Task.INSTALL)
                .map(this::opening)
                .sorted(Comparator.comparing((OpeningRisk one) -> -one.wet().value())
                        .thenComparing(one -> -one.rainedOn().value())
                        .thenComparing(OpeningRisk::opening))
                .toList();
    }

    private OpeningRisk opening(Job job) {
        return new OpeningRisk(
                job.opening.id(),
                job.facade(),
                job.opening.level(),
                job.visit.crew(),
                book.axis.at(job.planned),
                Figure.chance(runs.rainedOn.get(job.index), runs.trials),
                Figure.chance(runs.wetted.get(job.index), runs.trials),
                (double) runs.covered.get(job.index) / runs.trials);
    }

    private List<CrewDayRisk> crewDays() {
        Map<Place, List<Job>> planned = Arrays.stream(book.jobs)
                .filter(job -> job.day < book.crews.get(job.crew).days())
                .collect(Collectors.groupingBy(job -> new Place(job.crew, job.day)));
        return planned.entrySet().stream()
                .map(day -> crewDay(day.getKey(), day.getValue()))
                .sorted(Comparator.comparing(CrewDayRisk::date).thenComparing(CrewDayRisk::crew))
                .toList();
    }

    private record Place(int crew, int day) {}

    private CrewDayRisk crewDay(Place place, List<Job> jobs) {
        CrewDays days = book.crews.get(place.crew());
        return new CrewDayRisk(
                days.crew.id(),
                days.dates[place.day()],
                Figure.chance(runs.slipped[place.crew()].get(place.day()), runs.trials),
                jobs.stream()
                        .map(job -> job.facade().site())
                        .distinct()
                        .sorted()
                        .toList());
    }

    private List<DayRisk> days() {
        double[] later = hoursLater();
        return IntStream.range(0, runs.days())
                .mapToObj(day -> day(day, later))
                .filter(day -> day.rains().value() > 0)
                .sorted(Comparator.comparing((DayRisk day) -> -day.weight()).thenComparing(DayRisk::date))
                .toList();
    }

    /** By trial, of all facades together; what never got through counts as through when the weeks looked at end. */
    private double[] hoursLater() {
        double[] later = new double[runs.trials];
        for (int wall = 0; wall < runs.handover.length; wall++) {
            if (runs.handover[wall][0] < 0) continue;
            int planned = planned(wall);
            for (int trial = 0; trial < later.length; trial++)
                later[trial] += (Math.min(runs.handover[wall][trial], book.axis.length()) - planned) / MINUTES;
        }
        return later;
    }

    private DayRisk day(int day, double[] later) {
        Sample wet = new Sample();
        Sample dry = new Sample();
        for (int trial = 0; trial < later.length; trial++) (runs.rainOn[trial].get(day) ? wet : dry).add(later[trial]);
        boolean both = wet.count() > 1 && dry.count() > 1;
        return new DayRisk(
                runs.firstDay().plusDays(day), Figure.chance(wet.count(), runs.trials), both ? wet.minus(dry) : null);
    }

    private List<ClimateUsed> climates() {
        return book.skies.sites().stream()
                .map(sky -> new ClimateUsed(
                        sky.site().id(), sky.forecastEnd(), sky.climate().words()))
                .toList();
    }
}
