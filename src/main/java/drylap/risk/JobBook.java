package drylap.risk;

import drylap.climate.MinuteAxis;
import drylap.climate.MonthlyNormals;
import drylap.climate.Skies;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A plan compiled for replaying: its visits in order of their planned starts, the crews' days and the weather to be drawn. */
final class JobBook {
    /** Walls may still dry from rain that fell so long before the plan. */
    private static final Duration BEFORE = Duration.ofDays(3);

    final JobFolder folder;
    final MinuteAxis axis;
    final int start;
    final Skies skies;
    final List<CrewDays> crews = new ArrayList<>();
    final int[][] roads;
    final Job[] jobs;
    /** Planned days on which windows come that are not there yet, by lot: the site and the date. */
    final List<Lot> lots = new ArrayList<>();

    record Lot(int site, java.time.LocalDate date) {}

    private final Map<CrewId, Integer> crewIndex = new HashMap<>();
    private final Map<Course, Integer> courses = new HashMap<>();

    /** @param visits of tasks that are still to do; others are passed over */
    JobBook(JobFolder folder, List<Visit> visits, Instant from, List<MonthlyNormals> normals) {
        this.folder = folder;
        Instant zero = from.truncatedTo(ChronoUnit.HOURS).minus(BEFORE);
        axis = new MinuteAxis(
                zero, Math.toIntExact(Duration.between(zero, end(folder, from)).toMinutes()));
        start = axis.ceil(from);
        skies = new Skies(folder.sites(), folder.facades(), folder.forecasts(), folder.rules(), normals, axis, start);
        roads = folder.roads();
        addCrews();
        jobs = jobs(visits);
        new Precedence(this).link();
    }

    private static Instant end(JobFolder folder, Instant from) {
        Instant last = folder.lastLimit().filter(from::isBefore).orElse(from);
        return last.truncatedTo(ChronoUnit.HOURS).plus(Duration.ofDays(7L * CrewDays.WEEKS_MORE + 1));
    }

    private void addCrews() {
        Map<CrewId, List<Shift>> shifts = folder.shifts().stream().collect(Collectors.groupingBy(Shift::crew));
        for (Crew crew : folder.crews()) {
            crewIndex.put(crew.id(), crews.size());
            crews.add(new CrewDays(
                    crew, shifts.getOrDefault(crew.id(), List.of()), axis, folder.wayOut(crew), folder.wayBack(crew)));
        }
    }

    private Job[] jobs(List<Visit> visits) {
        Map<OpeningId, Opening> openings =
                folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
        List<Job> found = new ArrayList<>();
        List<Visit> inOrder = visits.stream()
                .sorted(Comparator.comparing(Visit::start)
                        .thenComparing(Visit::task)
                        .thenComparing(Visit::opening))
                .toList();
        for (Visit visit : inOrder) {
            Opening opening = openings.get(visit.opening());
            if (opening == null)
                throw new IllegalArgumentException(
                        "the plan visits %s, which is no opening of the job folder".formatted(visit.opening()));
            if (opening.tasks().contains(visit.task())) found.add(job(found.size(), visit, opening));
        }
        return found.toArray(Job[]::new);
    }

    private Job job(int index, Visit visit, Opening opening) {
        int site = skies.site(opening.facade().site());
        Integer crew = crewIndex.get(visit.crew());
        if (crew == null)
            throw new IllegalArgumentException(
                    "the plan sends crew %s, which is no crew of the job folder".formatted(visit.crew()));
        int course = courses.computeIfAbsent(opening.course(), _ -> courses.size());
        int planned = Math.max(start, axis.ceil(visit.start()));
        Job job = new Job(
                index,
                visit,
                opening,
                crew,
                site,
                skies.wall(opening.facade()),
                course,
                crews.get(crew).dayAt(planned),
                planned,
                folder.labour().minutes(opening, visit.task()),
                folder.labour().row(visit.task(), opening.method()),
                skies.at(site).known(visit.task()));
        if (job.task == Task.INSTALL) deliver(job);
        return job;
    }

    private void deliver(Job install) {
        install.openBefore = install.opening.stepList().open(install.opening.done());
        Site site = folder.sites().get(install.site);
        Instant comes = install.opening.deliveredOn().atStartOfDay(site.zone()).toInstant();
        install.earliest = axis.ceil(comes);
        if (install.earliest <= start) return;
        Lot lot = new Lot(install.site, install.opening.deliveredOn());
        if (!lots.contains(lot)) lots.add(lot);
        install.delivery = lots.indexOf(lot);
    }

    double rule(int site, Rule rule) {
        return skies.at(site).rules().value(rule);
    }

    int minutes(int site, Rule rule) {
        return (int) Math.ceil(rule(site, rule));
    }

    /** Midnights of the site by lot, for so many days after the planned one. */
    int delivered(Lot lot, int daysLater) {
        Site site = folder.sites().get(lot.site());
        return axis.ceil(
                lot.date().plusDays(daysLater).atStartOfDay(site.zone()).toInstant());
    }

    Map<Integer, List<Job>> byCourse(Task task) {
        return Arrays.stream(jobs)
                .filter(job -> job.task == task)
                .collect(Collectors.groupingBy(job -> job.course, LinkedHashMap::new, Collectors.toList()));
    }

    int courseIndex(Course course) {
        return Objects.requireNonNullElse(courses.get(course), -1);
    }
}
