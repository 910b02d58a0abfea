package drylap.audit;

import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.Task;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The visits that can be judged, because their crew, opening and task exist: by task, and by crew and day. */
final class Timetable {
    /** Of tasks that a folder says are finished, without saying when. */
    private static final Instant LONG_AGO = Instant.EPOCH;

    /** A crew's calendar day, by the clock at its base. */
    record CrewDay(CrewId crew, LocalDate date) implements Comparable<CrewDay> {
        private static final Comparator<CrewDay> ORDER =
                Comparator.comparing(CrewDay::crew).thenComparing(CrewDay::date);

        @Override
        public int compareTo(CrewDay other) {
            return ORDER.compare(this, other);
        }
    }

    private static final Comparator<Visit> BY_START =
            Comparator.comparing(Visit::start).thenComparing(Visit::sequence);

    private final JobBook book;
    private final List<Visit> visits;
    private final Map<TaskKey, Visit> byTask = new HashMap<>();

    Timetable(JobBook book, List<Visit> claimed) {
        this.book = book;
        visits = claimed.stream().filter(this::judgeable).sorted(BY_START).toList();
        visits.forEach(visit -> byTask.put(TaskKey.of(visit), visit));
    }

    private boolean judgeable(Visit visit) {
        return book.crew(visit.crew()).isPresent()
                && book.opening(visit.opening())
                        .filter(opening -> JobBook.needs(opening).contains(visit.task()))
                        .isPresent();
    }

    List<Visit> visits() {
        return visits;
    }

    Map<CrewId, List<Visit>> byCrew() {
        return visits.stream().collect(Collectors.groupingBy(Visit::crew, TreeMap::new, Collectors.toList()));
    }

    Map<CrewDay, List<Visit>> byDay() {
        return visits.stream().collect(Collectors.groupingBy(this::dayOf, TreeMap::new, Collectors.toList()));
    }

    private CrewDay dayOf(Visit visit) {
        Crew crew = book.crew(visit.crew()).orElseThrow();
        return new CrewDay(crew.id(), visit.start().atZone(crew.zone()).toLocalDate());
    }

    Optional<Visit> visit(Opening opening, Task task) {
        return Optional.ofNullable(byTask.get(new TaskKey(opening.id(), task)));
    }

    /** When a task of an opening is over: by the plan, or because an install was complete before; empty if never. */
    Optional<Instant> endOf(Opening opening, Task task) {
        if (task == Task.INSTALL && JobBook.installComplete(opening)) return Optional.of(book.doneAt(opening));
        if (opening.finished().contains(task)) return Optional.of(LONG_AGO);
        return visit(opening, task).map(Visit::end);
    }
}
