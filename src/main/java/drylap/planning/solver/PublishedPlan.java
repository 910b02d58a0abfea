package drylap.planning.solver;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells tasks where the published plan has them, and holds those that are pinned. */
final class PublishedPlan {
    private record Key(OpeningId opening, Task task) {}

    private final JobFolder folder;
    private final TimeAxis axis;
    private final List<CrewCalendar> crews;

    PublishedPlan(JobFolder folder, TimeAxis axis, List<CrewCalendar> crews) {
        this.folder = folder;
        this.axis = axis;
        this.crews = crews;
    }

    void apply(List<WorkTask> tasks) {
        Map<Key, PublishedVisit> published = new HashMap<>();
        for (PublishedVisit one : folder.published())
            published.put(new Key(one.visit().opening(), one.visit().task()), one);
        if (published.isEmpty()) return;
        for (WorkTask task : tasks) {
            PublishedVisit one = published.get(new Key(task.opening.id(), task.kind));
            if (one != null) mark(task, one);
        }
        for (CrewCalendar crew : crews) crew.pinned = pinnedOn(crew, tasks);
        tasks.stream().filter(task -> task.pinned).forEach(task -> limitWhatGoesBefore(task, cure(task)));
    }

    private int cure(WorkTask task) {
        return Problem.Limits.of(folder.rules().at(task.opening.facade().site()))
                .cure();
    }

    private void mark(WorkTask task, PublishedVisit one) {
        Visit visit = one.visit();
        task.publishedCrew = indexOf(visit.crew());
        task.publishedDate = visit.date();
        task.publishedStart = axis.floor(visit.start());
        if (!one.pinned()) return;
        task.pinned = true;
        task.pinnedStart = axis.floor(visit.start());
        task.pinnedCrew = task.publishedCrew;
        task.pinnedDay = crews.get(task.pinnedCrew).dayOf(visit.date());
        if (task.pinnedDay < 0)
            throw new IllegalArgumentException(
                    "the visit of %s for the %s of %s is pinned on %s, a date without a shift"
                            .formatted(visit.crew(), visit.task().code(), visit.opening(), visit.date()));
    }

    private int indexOf(CrewId id) {
        return crews.stream()
                .filter(crew -> crew.crew.id().equals(id))
                .findFirst()
                .map(crew -> crew.index)
                .orElseThrow(() -> new IllegalArgumentException("a published visit names the unknown crew " + id));
    }

    private static WorkTask[] pinnedOn(CrewCalendar crew, List<WorkTask> tasks) {
        return tasks.stream()
                .filter(task -> task.pinned && task.pinnedCrew == crew.index)
                .sorted(Comparator.comparingInt(task -> task.pinnedStart))
                .toArray(WorkTask[]::new);
    }

    /** What must come before a pinned task has to be through when that starts. */
    private static void limitWhatGoesBefore(WorkTask pinned, int cure) {
        switch (pinned.kind) {
            case INSTALL -> {}
            case TEST -> {
                WorkTask install = pinned.install;
                if (install != null) install.latestEnd = Math.min(install.latestEnd, pinned.pinnedStart - cure);
            }
            case WRAP -> {
                limit(pinned, List.of(Task.INSTALL, Task.TEST), pinned.course);
                for (CourseWork below = pinned.course.wrapsAbove; below != null; below = below.wrapsAbove)
                    limit(pinned, List.of(Task.WRAP), below);
            }
            case CLAD -> {
                limit(pinned, List.of(Task.INSTALL, Task.TEST, Task.WRAP), pinned.course);
                for (CourseWork below = pinned.course.cladsAbove; below != null; below = below.cladsAbove)
                    limit(pinned, List.of(Task.CLAD), below);
            }
        }
    }

    private static void limit(WorkTask pinned, List<Task> kinds, CourseWork course) {
        for (Task kind : kinds)
            for (WorkTask task : course.tasks(kind)) task.latestEnd = Math.min(task.latestEnd, pinned.pinnedStart);
    }
}
