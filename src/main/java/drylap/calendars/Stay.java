package drylap.calendars;

import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.planning.Plan;
import drylap.planning.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The visits of a day to one site that follow each other: what a crew lead thinks of as one entry of the calendar. */
record Stay(Key key, List<Visit> visits) {
    /** What it is known by from one plan to the next; {@code number} counts the stays of a day at that site, from 1. */
    record Key(LocalDate date, SiteId site, int number) {}

    Stay {
        visits = List.copyOf(visits);
    }

    Instant start() {
        return visits.getFirst().start();
    }

    Instant end() {
        return visits.stream().map(Visit::end).max(Comparator.naturalOrder()).orElseThrow();
    }

    /** In order of time. */
    static List<Stay> of(Plan plan, CrewId crew) {
        List<Visit> all = plan.visits().stream()
                .filter(visit -> visit.crew().equals(crew))
                .sorted(Comparator.comparing(Visit::start).thenComparingInt(Visit::sequence))
                .toList();
        Map<Key, Integer> counts = new HashMap<>();
        List<Stay> stays = new ArrayList<>();
        int from = 0;
        for (int next = 1; next <= all.size(); next++) {
            if (next < all.size() && together(all.get(from), all.get(next))) continue;
            Visit first = all.get(from);
            int number = counts.merge(new Key(first.date(), first.facade().site(), 0), 1, Integer::sum);
            stays.add(new Stay(new Key(first.date(), first.facade().site(), number), all.subList(from, next)));
            from = next;
        }
        return stays;
    }

    private static boolean together(Visit one, Visit other) {
        return one.date().equals(other.date())
                && one.facade().site().equals(other.facade().site());
    }
}
