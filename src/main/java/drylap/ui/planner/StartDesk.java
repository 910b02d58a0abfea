package drylap.ui.planner;

import drylap.demo.SampleResult;
import drylap.demo.SampleWeek;
import drylap.planning.PlanRuns;
import drylap.security.Operation;
import drylap.security.People;
import drylap.security.Person;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.StartFacts;
import java.time.Clock;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** What a start page asks for: how far a job of one's own has come, and the invented sample. */
@Service
final class StartDesk {
    private final People people;
    private final PlanRuns runs;
    private final SampleWeek sample;
    private final Clock clock;

    StartDesk(People people, PlanRuns runs, SampleWeek sample, Clock clock) {
        this.people = people;
        this.runs = runs;
        this.sample = sample;
        this.clock = clock;
    }

    StartFacts facts(Person who, Optional<FolderShown> own) {
        who.demand(Operation.SEE_START);
        boolean planning =
                own.filter(shown -> runs.underWay(shown.stored().id())).isPresent();
        return new StartFacts(who, own.orElse(null), planning, people.roles(), clock.instant());
    }

    boolean sampleIsThere() {
        return sample.isThere();
    }

    boolean mayLoadSample() {
        return sample.mayLoad();
    }

    SampleResult loadSample(Person who) {
        return sample.load(who);
    }

    SampleResult removeSample(Person who) {
        return sample.remove(who);
    }
}
