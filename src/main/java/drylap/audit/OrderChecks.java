package drylap.audit;

import drylap.kernel.Course;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import drylap.planning.TaskWords;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What must be done before what, and within what time (rules 3.4 to 3.7). */
record OrderChecks(JobBook book, Timetable timetable, Findings findings) {
    private static final int NAMED = 4;

    void run() {
        for (Visit visit : timetable.visits()) {
            Opening opening = book.opened(visit.opening());
            switch (visit.task()) {
                case INSTALL -> {}
                case TEST -> test(visit, opening);
                case WRAP -> wrap(visit, opening);
                case CLAD -> clad(visit, opening);
            }
        }
    }

    private void test(Visit visit, Opening opening) {
        double hours =
                SiteRules.at(book.folder().rules(), opening.facade().site()).value(Rule.CURE_BEFORE_TEST_H);
        Optional<Instant> cured = timetable
                .endOf(opening, Task.INSTALL)
                .map(end -> end.plus(Duration.ofSeconds(Math.round(hours * 3600))));
        if (cured.isEmpty()) findings.add(ContractRule.CURE, visit, "its install is not planned");
        else if (visit.start().isBefore(cured.get()))
            findings.add(
                    ContractRule.CURE,
                    visit,
                    "the sealant needs {0} h and has not cured before {1}",
                    hours,
                    findings.time(cured.get(), visit));
    }

    private void wrap(Visit visit, Opening opening) {
        follows(ContractRule.WRAP_COURSE, visit, opening.course(), Set.of(Task.INSTALL, Task.TEST));
        book.below(opening.course(), Task.WRAP)
                .ifPresent(below -> follows(ContractRule.WRAP_BELOW, visit, below, Set.of(Task.WRAP)));
        apron(visit, opening);
        if (JobBook.firstLayerFollows(opening)) bare(visit, opening);
    }

    private void clad(Visit visit, Opening opening) {
        Set<Task> before = book.has(opening.course(), Task.WRAP) ? Set.of(Task.WRAP) : Set.of(Task.INSTALL, Task.TEST);
        follows(ContractRule.CLAD_COURSE, visit, opening.course(), before);
        book.below(opening.course(), Task.CLAD)
                .ifPresent(below -> follows(ContractRule.CLAD_BELOW, visit, below, Set.of(Task.CLAD)));
    }

    private void follows(ContractRule rule, Visit visit, Course course, Set<Task> tasks) {
        List<Saying> early = new ArrayList<>();
        for (Opening other : book.course(course))
            for (Task task : tasks) {
                boolean concerned = task == Task.INSTALL || JobBook.needs(other).contains(task);
                Optional<Instant> end = timetable.endOf(other, task);
                if (concerned && end.map(visit.start()::isBefore).orElse(true))
                    early.add(Saying.of(
                            "{0} ({1})",
                            TaskWords.at(task, other.id()),
                            end.map(at -> Saying.of("ends {0}", findings.time(at, visit)))
                                    .orElseGet(() -> Saying.of("not planned"))));
            }
        early.sort(Comparator.comparing(Saying::words));
        if (!early.isEmpty())
            findings.add(rule, visit, "starts before the end of {0} in {1}", some(early), Findings.course(course));
    }

    private static Saying some(List<Saying> early) {
        Saying named = Saying.list(", ", early.subList(0, Math.min(NAMED, early.size())));
        return early.size() > NAMED ? Saying.of("{0} and {1} more", named, early.size() - NAMED) : named;
    }

    private void apron(Visit visit, Opening opening) {
        double days =
                SiteRules.at(book.folder().rules(), opening.facade().site()).value(Rule.APRON_MAX_DAYS);
        for (Opening other : book.course(opening.course())) {
            if (other.finished().contains(Task.WRAP)) continue;
            Optional<Instant> last = timetable.endOf(other, Task.INSTALL).map(end -> end.plus(JobBook.days(days)));
            if (last.filter(visit.end()::isAfter).isEmpty()) continue;
            findings.add(
                    ContractRule.APRON,
                    visit,
                    "the apron of {0} may stay free for {1} days, until {2}",
                    other.id(),
                    days,
                    findings.time(last.get(), visit));
            return;
        }
    }

    private void bare(Visit visit, Opening opening) {
        double days =
                SiteRules.at(book.folder().rules(), opening.facade().site()).value(Rule.BARE_MAX_DAYS);
        timetable
                .endOf(opening, Task.INSTALL)
                .map(end -> end.plus(JobBook.days(days)))
                .filter(visit.end()::isAfter)
                .ifPresent(last -> findings.add(
                        ContractRule.BARE,
                        visit,
                        "may stay without its barrier for {0} days, until {1}",
                        days,
                        findings.time(last, visit)));
    }
}
