package drylap.audit;

import drylap.kernel.Coded;
import drylap.kernel.Course;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.TaskWords;
import drylap.planning.UnplannedReason;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether the lists of a plan are whole: known names, each task once, reasons of the list, in order. */
record ListChecks(JobBook book, ClaimedPlan plan, Findings findings) {
    private static final Comparator<Visit> ORDER =
            Comparator.comparing(Visit::crew).thenComparing(Visit::start);

    void run() {
        plan.visits().forEach(this::names);
        sorted();
        List<ClaimedPlan.Unplanned> unplanned = plan.unplanned();
        if (unplanned != null) unplanned.forEach(this::reason);
        once(unplanned);
    }

    private void names(Visit visit) {
        if (book.crew(visit.crew()).isEmpty())
            findings.add(ContractRule.KNOWN, visit, "the job folder has no crew {0}", visit.crew());
        Optional<Opening> opening = book.opening(visit.opening());
        if (opening.isEmpty())
            findings.add(ContractRule.KNOWN, visit, "the job folder has no opening {0}", visit.opening());
        else place(visit, opening.get());
    }

    private void place(Visit visit, Opening opening) {
        Course claimed = new Course(visit.facade(), visit.level());
        if (!claimed.equals(opening.course()))
            findings.add(
                    ContractRule.PLACE,
                    visit,
                    "says {0}, but it lies in {1}",
                    Findings.course(claimed),
                    Findings.course(opening.course()));
        if (!JobBook.needs(opening).contains(visit.task()))
            findings.add(ContractRule.TASK_NEEDED, visit, "the opening needs no {0}", TaskWords.noun(visit.task()));
    }

    private void sorted() {
        for (int i = 1; i < plan.visits().size(); i++) {
            Visit visit = plan.visits().get(i);
            if (ORDER.compare(plan.visits().get(i - 1), visit) > 0)
                findings.add(ContractRule.SORTED, visit, "stands below a later visit of its crew, or a later crew");
        }
    }

    private void reason(ClaimedPlan.Unplanned entry) {
        Saying where = Saying.of("unplanned, {0}", TaskWords.at(entry.task(), entry.opening()));
        if (Coded.parse(UnplannedReason.class, entry.reason()).isEmpty())
            findings.plain(
                    ContractRule.REASON,
                    where.words(),
                    "'%s' is none of the reasons: %s".formatted(entry.reason(), Coded.codes(UnplannedReason.class)));
        Optional<Opening> opening = book.opening(entry.opening());
        if (opening.isEmpty())
            findings.add(ContractRule.KNOWN, where, "the job folder has no opening {0}", entry.opening());
        else if (!JobBook.needs(opening.get()).contains(entry.task()))
            findings.add(ContractRule.TASK_NEEDED, where, "the opening needs no {0}", TaskWords.noun(entry.task()));
    }

    private void once(@Nullable List<ClaimedPlan.Unplanned> unplanned) {
        Map<TaskKey, List<Saying>> stands = new HashMap<>();
        plan.visits()
                .forEach(visit -> stands.computeIfAbsent(TaskKey.of(visit), key -> new ArrayList<>())
                        .add(Saying.of("visit of crew {0}", visit.crew())));
        if (unplanned != null)
            unplanned.forEach(entry -> stands.computeIfAbsent(
                            new TaskKey(entry.opening(), entry.task()), key -> new ArrayList<>())
                    .add(Saying.of("unplanned")));
        for (Opening opening : book.folder().openings())
            for (Task task : JobBook.needs(opening)) count(opening.id(), task, stands, unplanned != null);
    }

    private void count(OpeningId opening, Task task, Map<TaskKey, List<Saying>> stands, boolean complete) {
        TaskKey key = new TaskKey(opening, task);
        List<Saying> places = stands.getOrDefault(key, List.of());
        if (places.isEmpty() && complete)
            findings.add(ContractRule.ONCE, key.saying(), "stands neither in the visits nor in the unplanned");
        if (places.size() > 1)
            findings.add(
                    ContractRule.ONCE, key.saying(), "stands {0} times: {1}", places.size(), Saying.list(", ", places));
    }
}
