package drylap.audit;

import drylap.crews.Shift;
import drylap.kernel.Task;
import drylap.planning.Visit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A crew's day: shift, break, travel, set-up, the way home, and the sheet's own numbering. */
record DayChecks(JobBook book, Findings findings) {
    void run(CrewRoute route) {
        sheet(route);
        if (route.shift().isEmpty()) {
            route.legs()
                    .forEach(leg -> findings.add(
                            ContractRule.SHIFT,
                            leg.visit(),
                            "crew {0} has no shift on {1}",
                            route.crew().id(),
                            Findings.day(route.date())));
            return;
        }
        Shift shift = route.shift().get();
        Visit previous = null;
        for (CrewRoute.Leg leg : route.legs()) {
            inside(leg.visit(), shift);
            inBreak(leg.visit(), shift);
            arrival(leg, previous, shift);
            previous = leg.visit();
        }
        home(route, shift);
    }

    private void sheet(CrewRoute route) {
        List<CrewRoute.Leg> legs = route.legs();
        for (int i = 0; i < legs.size(); i++) {
            Visit visit = legs.get(i).visit();
            if (visit.sequence() != i + 1)
                findings.add(
                        ContractRule.SEQUENCE, visit, "is number {0} on the sheet, not {1}", i + 1, visit.sequence());
            if (!visit.date().equals(route.date()))
                findings.add(
                        ContractRule.DATE,
                        visit,
                        "says {0}, but lies on {1}",
                        Findings.day(visit.date()),
                        Findings.day(route.date()));
        }
    }

    private void inside(Visit visit, Shift shift) {
        if (visit.start().isBefore(shift.startsAt()))
            findings.add(
                    ContractRule.SHIFT,
                    visit,
                    "starts before the shift, which begins at {0}",
                    findings.time(shift.startsAt(), visit));
        if (!visit.end().isAfter(shift.limit())) return;
        boolean runsOn = visit.task() == Task.INSTALL && reachesLaterShift(visit, shift);
        findings.add(
                runsOn ? ContractRule.UNBROKEN : ContractRule.SHIFT,
                visit,
                "ends at {0}; the crew's day is over at {1}",
                findings.time(visit.end(), visit),
                findings.time(shift.limit(), visit));
    }

    private boolean reachesLaterShift(Visit visit, Shift shift) {
        return book.folder().shifts().stream()
                .anyMatch(later -> later.crew().equals(shift.crew())
                        && later.date().isAfter(shift.date())
                        && later.startsAt().isBefore(visit.end()));
    }

    /** An install that is begun before the break and finished after it is left with unfinished laps. */
    private void inBreak(Visit visit, Shift shift) {
        if (shift.breakStart() == null || shift.breakEnd() == null) return;
        Instant from = shift.at(shift.breakStart());
        Instant until = shift.at(shift.breakEnd());
        if (!visit.start().isBefore(until) || !visit.end().isAfter(from)) return;
        boolean across = visit.task() == Task.INSTALL && visit.start().isBefore(from);
        findings.add(
                across ? ContractRule.UNBROKEN : ContractRule.BREAK,
                visit,
                "runs into the break from {0} to {1}",
                findings.time(from, visit),
                findings.time(until, visit));
    }

    private void arrival(CrewRoute.Leg leg, @Nullable Visit previous, Shift shift) {
        Instant free = previous == null ? shift.startsAt() : previous.end();
        Visit visit = leg.visit();
        // A start before the shift, or before the crew is free, is a breach of its own.
        if (visit.start().isBefore(free)) return;
        Instant there = free.plus(Duration.ofMinutes(leg.travelMin()));
        Instant ready = there.plus(Duration.ofMinutes(leg.setupMin()));
        if (!visit.start().isBefore(ready)) return;
        findings.add(
                visit.start().isBefore(there) ? ContractRule.TRAVEL : ContractRule.SETUP,
                visit,
                "the crew is free at {0}, travels {1} min and sets up for {2} min: ready at {3}",
                findings.time(free, visit),
                leg.travelMin(),
                leg.setupMin(),
                findings.time(ready, visit));
    }

    private void home(CrewRoute route, Shift shift) {
        Visit last = route.legs().getLast().visit();
        if (last.end().isAfter(shift.limit()) || !route.back().isAfter(shift.limit())) return;
        findings.add(
                ContractRule.HOME,
                last,
                "with {0} min of travel the crew is back at {1}; its day is over at {2}",
                route.homeMin(),
                findings.time(route.back(), last),
                findings.time(shift.limit(), last));
    }
}
