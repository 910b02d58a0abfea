package drylap.audit;

import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.planning.OpenWindow;
import drylap.sites.Facade;
import drylap.speech.Speech;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * Compares the claimed open hours with the audit's own, minute by minute. The stretch before a raining hour, which is shut
 * for an install's end only, may stand in the list or not; so may a minute at dawn and at dusk.
 */
record OpenHourChecks(JobBook book, Skies skies, Findings findings) {
    private static final Duration MINUTE = Duration.ofMinutes(1);

    void run(List<OpenWindow> claimed) {
        Set<FacadeId> known = new java.util.HashSet<>();
        for (Facade facade : book.folder().facades()) {
            known.add(facade.id());
            for (Task task : Task.values()) {
                List<OpenWindow> windows = claimed.stream()
                        .filter(window -> window.facade().equals(facade.id()) && window.task() == task)
                        .sorted(Comparator.comparing(window -> window.when().from()))
                        .toList();
                windows.forEach(window -> sound(window));
                if (book.has(facade.id(), task)) complete(facade.id(), task, windows);
            }
        }
        claimed.stream()
                .filter(window -> !known.contains(window.facade()))
                .forEach(window -> findings.plain(
                        ContractRule.KNOWN, "open hours, " + window.facade(), "the job folder has no such facade"));
    }

    private void sound(OpenWindow window) {
        WallHours wall = skies.at(window.facade());
        Instant minute = window.when().from();
        for (; minute.isBefore(window.when().until()); minute = minute.plus(MINUTE)) {
            Set<ContractRule> why = wall.shut(window.task(), minute, SiteSky.SUN_TOLERANCE);
            if (why.isEmpty()) continue;
            report(window.facade(), window.task(), minute, "is listed as open, but " + words(why));
            return;
        }
    }

    private static String words(Set<ContractRule> why) {
        return String.join("; ", why.stream().map(ContractRule::words).toList());
    }

    private void complete(FacadeId facade, Task task, List<OpenWindow> windows) {
        WallHours wall = skies.at(facade);
        List<OpenWindow> ahead = new ArrayList<>(windows);
        Instant minute = book.start().truncatedTo(ChronoUnit.MINUTES).plus(MINUTE);
        for (; minute.isBefore(book.horizonEnd()); minute = minute.plus(MINUTE)) {
            Instant now = minute;
            while (!ahead.isEmpty() && !ahead.getFirst().when().until().isAfter(now)) ahead.removeFirst();
            boolean listed = !ahead.isEmpty() && ahead.getFirst().when().contains(now);
            if (listed || !surelyOpen(wall, task, now)) continue;
            report(facade, task, now, "is open, but not listed");
            return;
        }
    }

    private static boolean surelyOpen(WallHours wall, Task task, Instant minute) {
        return wall.shut(task, minute, SiteSky.SUN_TOLERANCE.negated()).isEmpty()
                && !wall.skinCutShort(task, minute.plus(MINUTE));
    }

    private void report(FacadeId facade, Task task, Instant minute, String what) {
        ZoneId zone = book.site(facade.site()).zone();
        findings.plain(
                ContractRule.OPEN_HOURS,
                "open hours, %s of %s, %s"
                        .formatted(
                                task.code(), facade, Findings.time(minute, zone).in(Speech.ENGLISH)),
                what);
    }
}
