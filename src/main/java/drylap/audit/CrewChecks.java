package drylap.audit;

import drylap.crews.Crew;
import drylap.kernel.Trade;
import drylap.planning.TaskWords;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.time.Duration;
import java.util.List;

/** Who does a task and for how long (section 2, rules 3.1 and 3.3), and when the plan may begin. */
record CrewChecks(JobBook book, Timetable timetable, Pinned pinned, Findings findings) {
    void run() {
        WorkMinutes minutes = new WorkMinutes(book.folder().labour().rows());
        for (Visit visit : timetable.visits()) {
            Opening opening = book.opened(visit.opening());
            trade(visit, book.crew(visit.crew()).orElseThrow(), opening);
            duration(visit, minutes.of(opening, visit.task()));
            delivery(visit, opening);
            start(visit);
        }
        timetable.byCrew().values().forEach(this::oneAtATime);
    }

    private void trade(Visit visit, Crew crew, Opening opening) {
        if (crew.trade() != visit.task().trade())
            findings.add(
                    ContractRule.TRADE,
                    visit,
                    "crew {0} is a {1} crew; {2} needs {3}",
                    crew.id(),
                    Saying.of(crew.trade().code()),
                    TaskWords.noun(visit.task()),
                    Saying.of(visit.task().trade().code()));
        else if (crew.trade() == Trade.WINDOW
                && !crew.methods().isEmpty()
                && !crew.methods().contains(opening.method()))
            findings.add(
                    ContractRule.TRAINED,
                    visit,
                    "crew {0} is not trained for method {1}",
                    crew.id(),
                    opening.method().code());
    }

    private void duration(Visit visit, int minutes) {
        Duration planned = Duration.between(visit.start(), visit.end());
        if (!planned.equals(Duration.ofMinutes(minutes)))
            findings.add(
                    ContractRule.MINUTES,
                    visit,
                    "lasts {0} min in the plan; its labour is {1} min",
                    planned.toMinutes(),
                    minutes);
    }

    private void delivery(Visit visit, Opening opening) {
        if (visit.task() != drylap.kernel.Task.INSTALL) return;
        var zone = book.site(opening.facade().site()).zone();
        if (visit.start().isBefore(opening.deliveredOn().atStartOfDay(zone).toInstant()))
            findings.add(
                    ContractRule.DELIVERY,
                    visit,
                    "the window is delivered on {0}",
                    Findings.day(opening.deliveredOn()));
    }

    private void start(Visit visit) {
        if (visit.start().isBefore(book.start()) && !pinned.holds(visit))
            findings.add(
                    ContractRule.START,
                    visit,
                    "starts before the plan does, at {0}",
                    findings.time(book.start(), visit));
    }

    private void oneAtATime(List<Visit> visits) {
        Visit running = visits.getFirst();
        for (Visit visit : visits.subList(1, visits.size())) {
            if (visit.start().isBefore(running.end()))
                findings.add(
                        ContractRule.ONE_AT_A_TIME,
                        visit,
                        "the crew is at {0} until {1}",
                        TaskWords.at(running.task(), running.opening()),
                        findings.time(running.end(), visit));
            if (visit.end().isAfter(running.end())) running = visit;
        }
    }
}
