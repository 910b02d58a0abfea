package drylap.audit;

import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The visits that may not move (rule 3.9); those of tasks that no longer exist bind nobody. */
final class Pinned {
    private final Map<TaskKey, Visit> pinned = new HashMap<>();

    Pinned(JobBook book) {
        for (PublishedVisit published : published(book))
            if (published.pinned()) pinned.put(TaskKey.of(published.visit()), published.visit());
    }

    /** The published visits whose task is still to be done. */
    static List<PublishedVisit> published(JobBook book) {
        List<PublishedVisit> alive = new ArrayList<>();
        for (PublishedVisit published : book.folder().published()) {
            Visit visit = published.visit();
            boolean needed = book.opening(visit.opening())
                    .filter(opening -> JobBook.needs(opening).contains(visit.task()))
                    .isPresent();
            if (needed) alive.add(published);
        }
        return alive;
    }

    /** Whether the visit is a pinned one that has stayed where it was. */
    boolean holds(Visit visit) {
        Visit was = pinned.get(TaskKey.of(visit));
        return was != null && same(was, visit);
    }

    void check(JobBook book, Timetable timetable, Findings findings) {
        for (Visit was : pinned.values()) {
            Optional<Visit> is = timetable.visit(book.opened(was.opening()), was.task());
            if (is.isEmpty()) findings.add(ContractRule.PINNED, was, "is pinned, but the plan leaves it out");
            else if (!same(was, is.get()))
                findings.add(
                        ContractRule.PINNED,
                        is.get(),
                        "is pinned to crew {0}, {1} to {2}",
                        was.crew(),
                        findings.time(was.start(), was),
                        findings.time(was.end(), was));
        }
    }

    /** Its place in the day may change when other tasks come and go. */
    private static boolean same(Visit was, Visit is) {
        return was.crew().equals(is.crew())
                && was.date().equals(is.date())
                && was.start().equals(is.start())
                && was.end().equals(is.end());
    }
}
