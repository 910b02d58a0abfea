package drylap.risk;

import drylap.kernel.Course;
import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What must be through before each job by section 3 of the planner's contract. What must come first begins earlier in any legal
 * plan, so that jobs in order of their planned starts never wait for a later one.
 */
final class Precedence {
    private static final int HOUR = 60;

    private final JobBook book;
    private final Map<Integer, List<Job>> installs;
    private final Map<Integer, List<Job>> tests;
    private final Map<Integer, List<Job>> wraps;
    private final Map<Integer, List<Job>> clads;
    private final Map<FacadeId, TreeMap<Integer, Integer>> levels = new java.util.HashMap<>();
    private final Map<FacadeId, TreeMap<Integer, Integer>> wrapped = new java.util.HashMap<>();

    private final Map<List<Integer>, int[]> shared = new java.util.HashMap<>();

    Precedence(JobBook book) {
        this.book = book;
        installs = book.byCourse(Task.INSTALL);
        tests = book.byCourse(Task.TEST);
        wraps = book.byCourse(Task.WRAP);
        clads = book.byCourse(Task.CLAD);
        for (var opening : book.folder.openings()) {
            Course course = opening.course();
            level(levels, course);
            if (opening.tasks().contains(Task.WRAP)) level(wrapped, course);
        }
    }

    private void level(Map<FacadeId, TreeMap<Integer, Integer>> all, Course course) {
        all.computeIfAbsent(course.facade(), _ -> new TreeMap<>()).put(course.level(), book.courseIndex(course));
    }

    void link() {
        Map<Object, Integer> installOf = new java.util.HashMap<>();
        for (Job job : book.jobs) if (job.task == Task.INSTALL) installOf.put(job.opening.id(), job.index);
        for (Job job : book.jobs) {
            switch (job.task) {
                case INSTALL -> {}
                case TEST -> cure(job, installOf.getOrDefault(job.opening.id(), -1));
                case WRAP -> job.after = earlier(job, ready(job.course), below(wrapped, wraps, job));
                case CLAD ->
                    job.after = earlier(
                            job,
                            wraps.containsKey(job.course) ? of(wraps, job.course) : ready(job.course),
                            below(levels, clads, job));
            }
        }
    }

    private void cure(Job test, int install) {
        test.install = install;
        test.cure = (int) Math.ceil(book.rule(test.site, Rule.CURE_BEFORE_TEST_H) * HOUR);
        var done = test.opening.doneAt();
        if (install < 0) test.earliest = (done == null ? book.start : book.axis.ceil(done)) + test.cure;
    }

    private Stream<Job> ready(int course) {
        return Stream.concat(of(installs, course), of(tests, course));
    }

    private static Stream<Job> below(
            Map<FacadeId, TreeMap<Integer, Integer>> all, Map<Integer, List<Job>> jobs, Job job) {
        var courses = all.get(job.facade());
        var lower = courses == null ? null : courses.lowerEntry(job.opening.level());
        return lower == null ? Stream.empty() : of(jobs, lower.getValue());
    }

    private static Stream<Job> of(Map<Integer, List<Job>> jobs, int course) {
        return jobs.getOrDefault(course, List.of()).stream();
    }

    /**
     * In a plan that the day has broken something may stand before what it needs; it cannot be waited for. Jobs of a course
     * mostly wait for the same: they share one array, since trials read little else as often.
     */
    private int[] earlier(Job job, Stream<Job> some, Stream<Job> more) {
        List<Integer> before = Stream.concat(some, more)
                .map(other -> other.index)
                .filter(index -> index < job.index)
                .toList();
        return shared.computeIfAbsent(
                before, list -> list.stream().mapToInt(Integer::intValue).toArray());
    }
}
