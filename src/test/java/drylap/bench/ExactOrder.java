package drylap.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import drylap.bench.ExactJob.Work;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.sites.Opening;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What comes after what, and within what time: rules 4 to 7 of the contract. */
final class ExactOrder {
    private final ExactModel exact;
    private final ExactJob job;
    private final CpModel model;
    private final Rules rules;

    ExactOrder(ExactModel exact) {
        this.exact = exact;
        job = exact.job;
        model = exact.model;
        rules = job.folder.rules().at(job.folder.sites().getFirst().id());
    }

    void state() {
        for (Work work : job.works)
            switch (work.task()) {
                case INSTALL -> {}
                case TEST -> test(work);
                case WRAP -> wrap(work);
                case CLAD -> clad(work);
            }
    }

    private void test(Work test) {
        int cure = (int) Math.ceil(rules.value(Rule.CURE_BEFORE_TEST_H) * 60);
        work(test.opening(), Task.INSTALL)
                .ifPresentOrElse(
                        install -> after(test, install, cure),
                        () -> model.addGreaterOrEqual(
                                exact.starts.get(test.index()), installedAt(test.opening()) + cure));
    }

    private void wrap(Work wrap) {
        course(wrap).forEach(other -> {
            follow(wrap, other, List.of(Task.INSTALL, Task.TEST));
            if (!other.finished().contains(Task.WRAP)) within(wrap, other, Rule.APRON_MAX_DAYS);
        });
        below(wrap, Task.WRAP).forEach(other -> follow(wrap, other, List.of(Task.WRAP)));
        if (!wrap.opening().method().barrierFirst()) within(wrap, wrap.opening(), Rule.BARE_MAX_DAYS);
    }

    private void clad(Work clad) {
        boolean wrapped = course(clad).anyMatch(other -> other.tasks().contains(Task.WRAP));
        List<Task> before = wrapped ? List.of(Task.WRAP) : List.of(Task.INSTALL, Task.TEST);
        course(clad).forEach(other -> follow(clad, other, before));
        below(clad, Task.CLAD).forEach(other -> follow(clad, other, List.of(Task.CLAD)));
    }

    private Stream<Opening> course(Work work) {
        return job.folder.openings().stream()
                .filter(other -> other.course().equals(work.opening().course()));
    }

    /** Openings of the next lower level of the facade that has such tasks. */
    private Stream<Opening> below(Work work, Task task) {
        List<Opening> lower = job.folder.openings().stream()
                .filter(other -> other.facade().equals(work.opening().facade())
                        && other.level() < work.opening().level()
                        && other.tasks().contains(task))
                .toList();
        int next = lower.stream().mapToInt(Opening::level).max().orElse(0);
        return lower.stream().filter(other -> other.level() == next);
    }

    private Optional<Work> work(Opening opening, Task task) {
        return job.works.stream()
                .filter(work -> work.opening() == opening && work.task() == task)
                .findFirst();
    }

    private int installedAt(Opening opening) {
        return Objects.requireNonNull(job.installedAt(opening));
    }

    private void follow(Work later, Opening other, List<Task> tasks) {
        for (Task task : tasks) work(other, task).ifPresent(first -> after(later, first, 0));
    }

    private void after(Work later, Work first, int lag) {
        model.addGreaterOrEqual(
                exact.starts.get(later.index()),
                LinearExpr.affine(exact.starts.get(first.index()), 1, first.minutes() + (long) lag));
    }

    private void within(Work wrap, Opening installed, Rule rule) {
        int most = (int) Math.floor(rules.value(rule) * 1440);
        work(installed, Task.INSTALL)
                .ifPresentOrElse(
                        install -> model.addLessOrEqual(
                                exact.end(wrap),
                                LinearExpr.affine(
                                        exact.starts.get(install.index()), 1, install.minutes() + (long) most)),
                        () -> model.addLessOrEqual(exact.end(wrap), installedAt(installed) + most));
    }
}
