package drylap.audit;

import drylap.planning.Visit;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;

/** Whether every minute of a task is open at its wall (rule 3.8). */
record WeatherChecks(Timetable timetable, Skies skies, JobBook book, Findings findings) {
    private record Shut(Instant first, int minutes) {
        Shut more() {
            return new Shut(first, minutes + 1);
        }
    }

    void run() {
        for (Visit visit : timetable.visits()) {
            WallHours wall = skies.at(book.opened(visit.opening()).facade());
            minutes(visit, wall);
            if (wall.skinCutShort(visit.task(), visit.end()))
                findings.add(
                        ContractRule.SKIN,
                        visit,
                        "ends at {0}, and it rains before the sealant has skinned",
                        findings.time(visit.end(), visit));
        }
    }

    private void minutes(Visit visit, WallHours wall) {
        Map<ContractRule, Shut> shut = new EnumMap<>(ContractRule.class);
        Instant minute = visit.start().truncatedTo(ChronoUnit.MINUTES);
        for (; minute.isBefore(visit.end()); minute = minute.plus(Duration.ofMinutes(1)))
            for (ContractRule why : wall.shut(visit.task(), minute, SiteSky.SUN_TOLERANCE)) {
                Shut so = shut.getOrDefault(why, new Shut(minute, 0));
                shut.put(why, so.more());
            }
        shut.forEach((why, when) -> findings.add(
                why,
                visit,
                "{0} of its minutes are shut, from {1} on",
                when.minutes(),
                findings.time(when.first(), visit)));
    }
}
