package drylap.audit;

import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Judges a plan against sections 2 to 6 of the planning contract, with no line of code of those who make plans. */
public final class Audit {
    private Audit() {}

    /**
     * Judges any plan, however broken; every breach is named.
     *
     * @param now the moment that the plan was made for; absent: the first shift's start
     */
    public static AuditReport of(JobFolder folder, ClaimedPlan plan, @Nullable Instant now) {
        JobBook book = new JobBook(folder, now);
        Findings findings = new Findings(book);
        Timetable timetable = new Timetable(book, plan.visits());
        Skies skies = new Skies(book);
        List<CrewRoute> routes = CrewRoute.all(book, timetable);
        visits(book, plan, timetable, skies, routes, findings);
        Recount recount = new Recount(book, timetable, skies, routes);
        Ledger counted = recount.ledger(findings.hard());
        List<CoverNow> cover = recount.coverNow();
        LedgerChecks claims = new LedgerChecks(book, recount, findings);
        if (plan.ledger() != null) claims.ledger(plan.ledger(), counted);
        if (plan.coverNow() != null) claims.coverNow(plan.coverNow(), cover);
        if (plan.openHours() != null) new OpenHourChecks(book, skies, findings).run(plan.openHours());
        return new AuditReport(findings.breaches(), book.start(), counted, cover);
    }

    private static void visits(
            JobBook book,
            ClaimedPlan plan,
            Timetable timetable,
            Skies skies,
            List<CrewRoute> routes,
            Findings findings) {
        Pinned pinned = new Pinned(book);
        new ListChecks(book, plan, findings).run();
        new CrewChecks(book, timetable, pinned, findings).run();
        DayChecks days = new DayChecks(book, findings);
        routes.forEach(days::run);
        new OrderChecks(book, timetable, findings).run();
        new WeatherChecks(timetable, skies, book, findings).run();
        pinned.check(book, timetable, findings);
    }
}
