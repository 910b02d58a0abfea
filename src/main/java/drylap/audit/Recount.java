package drylap.audit;

import drylap.kernel.Course;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Facade;
import drylap.sites.Opening;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The plan's costs, counted anew (section 5). */
record Recount(JobBook book, Timetable timetable, Skies skies, List<CrewRoute> routes) {
    private static final long UNPLANNED = 1000;
    private static final long LEFT_OPEN = 5000;

    Ledger ledger(long hard) {
        Rules rules = book.folder().rules().everywhere();
        List<Ledger.Line> lines = new ArrayList<>();
        amounts().forEach((term, amount) -> {
            long weight = rules.whole(term.weight());
            lines.add(new Ledger.Line(term, amount, weight, amount * weight));
        });
        long soft = lines.stream().mapToLong(Ledger.Line::cost).sum();
        return new Ledger(lines, hard, medium(), soft);
    }

    private Map<LedgerTerm, Long> amounts() {
        Map<LedgerTerm, Long> amounts = new EnumMap<>(LedgerTerm.class);
        amounts.put(LedgerTerm.LATE_HANDOVER, lateHours());
        amounts.put(LedgerTerm.CREW_DAYS, (long) routes.size());
        amounts.put(
                LedgerTerm.TRAVEL,
                routes.stream().mapToLong(CrewRoute::travelMin).sum());
        amounts.put(
                LedgerTerm.SETUP, routes.stream().mapToLong(CrewRoute::setupMin).sum());
        amounts.put(
                LedgerTerm.OVERTIME,
                routes.stream().mapToLong(CrewRoute::overtimeMin).sum());
        amounts.put(LedgerTerm.OPEN_COURSE, openCourseHours());
        amounts.put(LedgerTerm.RAIN_RISK, rainRisk(0));
        amounts.put(LedgerTerm.CHANGED, changed());
        return amounts;
    }

    static long startedHours(Instant from, Instant until) {
        long seconds = Duration.between(from, until).toSeconds();
        return seconds <= 0 ? 0 : (seconds + 3599) / 3600;
    }

    private long lateHours() {
        return book.folder().facades().stream().mapToLong(this::lateHours).sum();
    }

    private long lateHours(Facade facade) {
        if (facade.handoverDue() == null || !book.has(facade.id(), Task.CLAD)) return 0;
        Instant due = facade.handoverDue()
                .plusDays(1)
                .atStartOfDay(book.site(facade.id().site()).zone())
                .toInstant();
        List<Optional<Instant>> ends = book.folder().openings().stream()
                .filter(opening -> opening.facade().equals(facade.id()))
                .map(opening -> timetable.endOf(opening, Task.CLAD))
                .toList();
        Instant last = ends.stream()
                .map(end -> end.orElse(book.horizonEnd()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return startedHours(due, last);
    }

    private long openCourseHours() {
        return book.courses().keySet().stream().mapToLong(this::openHours).sum();
    }

    private long openHours(Course course) {
        List<Visit> installs = book.course(course).stream()
                .flatMap(opening -> timetable.visit(opening, Task.INSTALL).stream())
                .toList();
        if (installs.isEmpty()) return 0;
        return startedHours(
                installs.stream()
                        .map(Visit::start)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                installs.stream().map(Visit::end).max(Comparator.naturalOrder()).orElseThrow());
    }

    /**
     * Thousandths of chance of rain, an install's own rounded half up.
     *
     * @param nudge added before rounding, to find out which chances lie too near a half for binary fractions to tell
     */
    long rainRisk(double nudge) {
        return timetable.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL)
                .mapToLong(visit -> {
                    SiteSky sky =
                            skies.over(book.opened(visit.opening()).facade().site());
                    return (long) Math.floor(1000 * sky.chanceOfRain(visit.start(), visit.end()) + nudge + 0.5);
                })
                .sum();
    }

    private long changed() {
        return Pinned.published(book).stream()
                .map(PublishedVisit::visit)
                .filter(was -> timetable
                        .visit(book.opened(was.opening()), was.task())
                        .filter(is -> is.crew().equals(was.crew()) && is.date().equals(was.date()))
                        .isEmpty())
                .count();
    }

    private long medium() {
        long medium = LEFT_OPEN * coverNow().size();
        for (Opening opening : book.folder().openings())
            for (Task task : JobBook.needs(opening))
                if (timetable.visit(opening, task).isEmpty()) medium += UNPLANNED * (1 + opening.priority());
        return medium;
    }

    /** The openings that stand open and are not closed before the next raining hour begins. */
    List<CoverNow> coverNow() {
        WorkMinutes minutes = new WorkMinutes(book.folder().labour().rows());
        List<CoverNow> list = new ArrayList<>();
        for (Opening opening : book.folder().openings()) {
            if (!JobBook.standsOpen(opening)) continue;
            Optional<Instant> rain = skies.over(opening.facade().site()).nextRain(book.start());
            Optional<Visit> install = timetable.visit(opening, Task.INSTALL);
            boolean closes = install.filter(visit -> !visit.end().isAfter(rain.orElse(Instant.MAX)))
                    .isPresent();
            if (rain.isPresent() && !closes)
                list.add(new CoverNow(opening.id(), opening.doneAt(), rain.get(), minutes.of(opening, Task.INSTALL)));
        }
        return list;
    }
}
