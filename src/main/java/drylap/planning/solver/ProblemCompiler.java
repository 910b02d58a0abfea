package drylap.planning.solver;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.UnplannedReason;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Turns a job folder into a {@link Problem}. */
final class ProblemCompiler {
    private final JobFolder folder;
    private final TimeAxis axis;
    private final int horizonEnd;
    private final Skies skies;
    private final Map<SiteId, Integer> siteIndex = new HashMap<>();
    private final Map<FacadeId, FacadeWork> facades = new LinkedHashMap<>();
    private final Map<Course, CourseWork> courses = new TreeMap<>();
    private final List<WorkTask> tasks = new ArrayList<>();
    private final List<CrewCalendar> crews = new ArrayList<>();
    private final Map<WorkTask, UnplannedReason> never = new LinkedHashMap<>();

    private ProblemCompiler(JobFolder folder, Span span) {
        this.folder = folder;
        axis = span.axis();
        horizonEnd = span.horizonEnd();
        for (Site site : folder.sites()) siteIndex.put(site.id(), siteIndex.size());
        skies = new Skies(folder, span);
    }

    static Problem compile(JobFolder folder, Span span) {
        return new ProblemCompiler(folder, span).compile();
    }

    private Problem compile() {
        int[][] roads = folder.roads();
        for (Facade facade : folder.facades()) addFacade(facade);
        for (Opening opening : folder.openings()) courseOf(opening);
        linkCourses();
        for (Opening opening : folder.openings()) addTasks(opening);
        addCrews();
        new PublishedPlan(folder, axis, crews).apply(tasks);
        List<CourseWork> ordered = List.copyOf(courses.values());
        List<Unit> units = new UnitCutter(crews, never, tasks.size()).cut(ordered);
        return new Problem(
                folder,
                axis,
                horizonEnd,
                folder.sites(),
                List.copyOf(facades.values()),
                ordered,
                List.copyOf(tasks),
                never,
                units,
                List.copyOf(crews),
                roads,
                skies.openWindows(folder.facades()),
                count(units, ordered.size()),
                crewsByKind(),
                Problem.Kinship.of(units),
                Problem.weights(folder),
                folder.sites().stream().map(site -> limitsAt(site.id())).toList(),
                new DryHours(tasks, crews));
    }

    private void addFacade(Facade facade) {
        int site = Objects.requireNonNull(siteIndex.get(facade.id().site()));
        int due = facade.handoverDue() == null
                ? TimeAxis.NEVER
                : axis.floor(facade.handoverDue()
                        .plusDays(1)
                        .atStartOfDay(folder.sites().get(site).zone())
                        .toInstant());
        facades.put(facade.id(), new FacadeWork(facades.size(), facade, site, due));
    }

    private void courseOf(Opening opening) {
        courses.computeIfAbsent(opening.course(), course -> {
            FacadeWork facade = Objects.requireNonNull(facades.get(course.facade()));
            return new CourseWork(courses.size(), course, facade);
        });
    }

    /** Courses come sorted by facade and level, so the one before on the same facade is the next lower. */
    private void linkCourses() {
        Map<FacadeWork, CourseWork> below = new HashMap<>();
        Map<FacadeWork, CourseWork> wrappedBelow = new HashMap<>();
        Map<Course, List<Opening>> openings =
                folder.openings().stream().collect(Collectors.groupingBy(Opening::course));
        for (CourseWork course : courses.values()) {
            course.facade.courses.add(course);
            course.cladsAbove = below.put(course.facade, course);
            boolean wraps = Objects.requireNonNull(openings.get(course.course)).stream()
                    .anyMatch(opening -> opening.tasks().contains(Task.WRAP));
            if (wraps) course.wrapsAbove = wrappedBelow.put(course.facade, course);
        }
    }

    private void addTasks(Opening opening) {
        CourseWork course = Objects.requireNonNull(courses.get(opening.course()));
        int installedAt = opening.doneAt() == null ? 0 : axis.ceil(opening.doneAt());
        // what is wrapped has no free apron any more, and its install was over before
        if (opening.installed() && !opening.finished().contains(Task.WRAP)) course.installedAt(installedAt);
        WorkTask install = null;
        for (Task kind : opening.tasks()) {
            WorkTask task = new WorkTask(
                    tasks.size(),
                    opening,
                    kind,
                    course,
                    folder.labour().minutes(opening, kind),
                    folder.labour().row(kind, opening.method()),
                    skies.open(opening.facade(), kind),
                    skies.odds(opening.facade().site()));
            tasks.add(task);
            course.tasks(kind).add(task);
            if (kind == Task.INSTALL) install = delivered(task);
            task.install = install;
            if (opening.installed()) task.ownInstalledEnd = installedAt;
            if (kind == Task.TEST && opening.installed())
                task.earliest = installedAt + limitsAt(opening.facade().site()).cure();
        }
    }

    private Problem.Limits limitsAt(SiteId site) {
        return Problem.Limits.of(folder.rules().at(site));
    }

    private WorkTask delivered(WorkTask install) {
        Opening opening = install.opening;
        Site site = folder.sites().get(install.site);
        install.earliest =
                axis.ceil(opening.deliveredOn().atStartOfDay(site.zone()).toInstant());
        if (opening.stepList().open(opening.done())) install.coverBy = skies.nextRain(site.id());
        return install;
    }

    private void addCrews() {
        Map<CrewId, List<Shift>> shifts = folder.shifts().stream().collect(Collectors.groupingBy(Shift::crew));
        for (Crew crew : folder.crews())
            crews.add(new CrewCalendar(
                    crews.size(),
                    crew,
                    shifts.getOrDefault(crew.id(), List.of()),
                    axis,
                    folder.wayOut(crew),
                    folder.wayBack(crew)));
    }

    private List<List<CrewCalendar>> crewsByKind() {
        return java.util.Arrays.stream(Task.values())
                .map(kind -> crews.stream()
                        .filter(crew -> crew.crew.trade() == kind.trade())
                        .toList())
                .toList();
    }

    private static int[][] count(List<Unit> units, int courses) {
        int[][] count = new int[Task.values().length][courses];
        for (Unit unit : units) count[unit.kind.ordinal()][unit.course.index]++;
        return count;
    }
}
