package drylap.cli;

import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.sites.Site;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a person wants to know of a plan before opening its files. */
final class PlanSummary {
    private static final DateTimeFormatter RAIN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private PlanSummary() {}

    static void print(Plan plan, JobFolder folder, Path where, PrintWriter out) {
        out.printf(
                "%d visits planned, %d tasks not planned, %d openings to cover now.%n",
                plan.visits().size(), plan.unplanned().size(), plan.coverNow().size());
        plan.unplanned().stream()
                .collect(Collectors.groupingBy(
                        task -> task.reason().code(), java.util.TreeMap::new, Collectors.counting()))
                .forEach((reason, count) -> out.printf("  not planned, %s: %d%n", reason, count));
        plan.coverNow()
                .forEach(cover -> out.printf(
                        "  cover now: %s, rain from %s, %d min to close%n",
                        cover.opening(),
                        RAIN.format(cover.nextRain().atZone(zoneOf(cover.opening(), folder))),
                        cover.minutesToClose()));
        blind(plan, folder, out);
        ledger(plan.ledger(), out);
        out.printf("Written to %s%n", where);
        out.println(Commands.NOT_A_SAFETY_STATEMENT);
    }

    /** Hours that no forecast tells are planned as open, which whoever reads the plan must know. */
    private static void blind(Plan plan, JobFolder folder, PrintWriter out) {
        for (Site site : folder.sites()) {
            Instant end = folder.forecast(site.id()).end();
            if (end.equals(Instant.MIN))
                out.printf("  no forecast at site %s: all of its hours are counted as open%n", site.id());
            else if (end.isBefore(plan.horizonEnd()))
                out.printf(
                        "  the forecast of site %s ends %s: hours after it are counted as open%n",
                        site.id(), RAIN.format(end.atZone(site.zone())));
        }
    }

    private static ZoneId zoneOf(OpeningId id, JobFolder folder) {
        return folder.openings().stream()
                .filter(opening -> opening.id().equals(id))
                .flatMap(opening -> folder.sites().stream()
                        .filter(site -> site.id().equals(opening.facade().site())))
                .map(Site::zone)
                .findFirst()
                .orElseThrow();
    }

    private static void ledger(Ledger ledger, PrintWriter out) {
        for (Ledger.Line line : ledger.lines())
            out.printf(
                    "  %-14s %,10d  x %,5d = %,13d   %s%n",
                    line.term().code(),
                    line.amount(),
                    line.weight(),
                    line.cost(),
                    line.term().meaning());
        out.printf(
                "  cost %,d (soft), %,d for work left out (medium), %d broken rules (hard)%n",
                ledger.soft(), ledger.medium(), ledger.hard());
    }
}
