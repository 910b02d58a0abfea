package drylap.planning.solver;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.SmallChange;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** The short list of changes that may plan a task, in the order of their size. */
final class SmallChanges {
    private static final int MOST_OF_A_KIND = 12;
    private static final int MOST_DAYS_EARLIER = 14;

    private final JobFolder folder;
    private final Instant from;
    private final WorkTask task;
    private final List<Crew> able;

    /** @param task the one that the others wait for */
    SmallChanges(JobFolder folder, Instant from, WorkTask task) {
        this.folder = folder;
        this.from = from;
        this.task = task;
        able = folder.crews().stream()
                .filter(crew -> crew.trade() == task.kind.trade() && crew.trainedFor(task.opening.method()))
                .toList();
    }

    List<SmallChange> all() {
        return Stream.of(
                        Stream.of(new SmallChange.PlanAgain()),
                        overtime(),
                        deliveries(),
                        crewDays(),
                        training(),
                        limits())
                .<SmallChange>flatMap(Function.identity())
                .toList();
    }

    private Stream<SmallChange> overtime() {
        return able.stream()
                .flatMap(this::shifts)
                .filter(shift -> shift.limit().isAfter(from))
                .sorted(Comparator.comparing(Shift::date).thenComparing(Shift::crew))
                .filter(shift -> last(shift).isBefore(LocalTime.of(23, 0)))
                .limit(MOST_OF_A_KIND)
                .map(shift -> new SmallChange.Overtime(
                        shift.crew(), shift.date(), last(shift).plusHours(1)));
    }

    private static LocalTime last(Shift shift) {
        LocalTime overtime = shift.overtimeUntil();
        return overtime == null ? shift.end() : overtime;
    }

    private Stream<Shift> shifts(Crew crew) {
        return folder.shifts().stream().filter(shift -> shift.crew().equals(crew.id()));
    }

    /** Not to before the day from which is planned: a window that could be there already holds nothing up. */
    private Stream<SmallChange> deliveries() {
        if (task.kind != Task.INSTALL) return Stream.of();
        ZoneId zone = folder.sites().get(task.site).zone();
        LocalDate today = from.atZone(zone).toLocalDate();
        LocalDate due = task.opening.deliveredOn();
        return IntStream.rangeClosed(1, MOST_DAYS_EARLIER)
                .filter(days -> !due.minusDays(days).isBefore(today))
                .mapToObj(days -> new SmallChange.EarlierDelivery(task.opening.id(), days));
    }

    private Stream<SmallChange> crewDays() {
        LocalDate last = folder.shifts().stream()
                .map(Shift::date)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return able.stream()
                .flatMap(crew -> freeDays(crew, last))
                .sorted(Comparator.comparing(SmallChange.CrewDay::date))
                .limit(MOST_OF_A_KIND)
                .map(Function.identity());
    }

    /** Dates on which the crew has no shift, up to the day after the last of any crew. */
    private Stream<SmallChange.CrewDay> freeDays(Crew crew, LocalDate last) {
        List<Shift> own = shifts(crew).toList();
        if (own.isEmpty()) return Stream.of();
        List<LocalDate> taken = own.stream().map(Shift::date).toList();
        Shift like = own.getFirst();
        LocalDate first = from.atZone(crew.zone()).toLocalDate();
        return LongStream.rangeClosed(0, Math.max(0, java.time.temporal.ChronoUnit.DAYS.between(first, last) + 1))
                .mapToObj(first::plusDays)
                .filter(date -> !taken.contains(date))
                .map(date -> new SmallChange.CrewDay(like, date));
    }

    private Stream<SmallChange> training() {
        if (task.kind != Task.INSTALL) return Stream.of();
        return folder.crews().stream()
                .filter(crew -> crew.trade() == task.kind.trade() && !crew.trainedFor(task.opening.method()))
                .map(crew -> new SmallChange.Training(crew.id(), task.opening.method()));
    }

    private Stream<SmallChange> limits() {
        if (task.kind != Task.WRAP) return Stream.of();
        var site = task.opening.facade().site();
        return Stream.of(Rule.APRON_MAX_DAYS, Rule.BARE_MAX_DAYS)
                .filter(rule -> folder.rules().at(site).value(rule) + 1 <= rule.most())
                .map(rule -> new SmallChange.LongerLimit(site, rule));
    }
}
