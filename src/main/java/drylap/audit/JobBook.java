package drylap.audit;

import drylap.assembly.SecondLayer;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A job folder opened for looking things up, and the moment from which a plan for it is judged. */
final class JobBook {
    private record ShiftKey(CrewId crew, LocalDate date) {}

    private final JobFolder folder;
    private final Instant start;
    private final Instant horizonEnd;
    private final Map<SiteId, Site> sites;
    private final Map<OpeningId, Opening> openings;
    private final Map<CrewId, Crew> crews;
    private final Map<ShiftKey, Shift> shifts;
    private final Map<Course, List<Opening>> courses;

    JobBook(JobFolder folder, @Nullable Instant now) {
        this.folder = folder;
        sites = byKey(folder.sites(), Site::id);
        openings = byKey(folder.openings(), Opening::id);
        crews = byKey(folder.crews(), Crew::id);
        shifts = byKey(folder.shifts(), shift -> new ShiftKey(shift.crew(), shift.date()));
        courses = folder.openings().stream().collect(Collectors.groupingBy(Opening::course));
        start = now != null ? now : firstShift();
        horizonEnd = folder.shifts().stream()
                .map(Shift::limit)
                .max(Comparator.naturalOrder())
                .orElse(start);
    }

    private static <K, V> Map<K, V> byKey(List<V> values, Function<V, K> key) {
        return values.stream()
                .collect(Collectors.toMap(
                        key,
                        value -> value,
                        (a, b) -> {
                            throw new IllegalArgumentException("twice in the folder: " + key.apply(a));
                        },
                        LinkedHashMap::new));
    }

    /** A folder without shifts plans nothing, so that its start is of no consequence. */
    private Instant firstShift() {
        return folder.shifts().stream()
                .map(Shift::startsAt)
                .min(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    JobFolder folder() {
        return folder;
    }

    Instant start() {
        return start;
    }

    /** The latest moment at which any crew may be back, overtime included. */
    Instant horizonEnd() {
        return horizonEnd;
    }

    Optional<Crew> crew(CrewId id) {
        return Optional.ofNullable(crews.get(id));
    }

    Optional<Opening> opening(OpeningId id) {
        return Optional.ofNullable(openings.get(id));
    }

    Opening opened(OpeningId id) {
        return Objects.requireNonNull(openings.get(id));
    }

    Optional<Shift> shift(CrewId crew, LocalDate date) {
        return Optional.ofNullable(shifts.get(new ShiftKey(crew, date)));
    }

    Site site(SiteId id) {
        return Objects.requireNonNull(sites.get(id), () -> "no site " + id);
    }

    Map<Course, List<Opening>> courses() {
        return courses;
    }

    List<Opening> course(Course course) {
        return courses.getOrDefault(course, List.of());
    }

    /** The nearest course below on the same facade that has the task somewhere. */
    Optional<Course> below(Course course, Task task) {
        NavigableSet<Integer> lower = new TreeSet<>();
        for (Course other : courses.keySet())
            if (other.facade().equals(course.facade()) && other.level() < course.level() && has(other, task))
                lower.add(other.level());
        return lower.isEmpty() ? Optional.empty() : Optional.of(new Course(course.facade(), lower.last()));
    }

    boolean has(Course course, Task task) {
        return course(course).stream().anyMatch(opening -> needs(opening).contains(task));
    }

    boolean has(FacadeId facade, Task task) {
        return folder.openings().stream()
                .anyMatch(opening ->
                        opening.facade().equals(facade) && needs(opening).contains(task));
    }

    /** The tasks of an opening, by the table of section 2. */
    static Set<Task> needs(Opening opening) {
        Set<Task> tasks = EnumSet.of(Task.CLAD);
        if (!installComplete(opening)) tasks.add(Task.INSTALL);
        if (opening.waterTest()) tasks.add(Task.TEST);
        if (firstLayerFollows(opening) || opening.secondLayer() != SecondLayer.NONE) tasks.add(Task.WRAP);
        tasks.removeAll(opening.finished());
        return tasks;
    }

    static boolean firstLayerFollows(Opening opening) {
        return switch (opening.method()) {
            case A, B -> true;
            case A1, B1 -> false;
        };
    }

    static boolean installComplete(Opening opening) {
        return opening.stepList().remaining(opening.done()) == 0;
    }

    /** Begun and not complete: rain finds its way in. */
    static boolean standsOpen(Opening opening) {
        int remaining = opening.stepList().remaining(opening.done());
        return remaining > 0 && remaining < opening.stepList().total();
    }

    /** When the last step was done; where nobody wrote it down, the plan's start. */
    Instant doneAt(Opening opening) {
        return opening.doneAt() != null ? opening.doneAt() : start;
    }

    static Duration days(double days) {
        return Duration.ofSeconds(Math.round(days * 86_400));
    }
}
