package drylap.ui.admin;

import drylap.forecasts.SourceAges;
import drylap.planning.EndedRuns;
import drylap.platform.WorkState;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.ui.drawn.MachineSheet;
import java.time.Clock;
import java.util.Objects;
import org.springframework.stereotype.Service;

/** What the screen of how Drylap runs reads. */
@Service
final class MachineDesk {
    private static final int MOST_JOBS = 100;

    private final WorkState work;
    private final EndedRuns runs;
    private final SourceAges sources;
    private final Clock clock;

    MachineDesk(WorkState work, EndedRuns runs, SourceAges sources, Clock clock) {
        this.work = work;
        this.runs = runs;
        this.sources = sources;
        this.clock = clock;
    }

    MachineSheet sheet(Person who) {
        who.demand(Operation.SEE_MACHINE);
        return MachineSheet.of(new MachineSheet.Found(
                clock.instant(),
                work.jobs(MOST_JOBS),
                sources.all(who),
                runs.last(who),
                work.databaseBytes(),
                work.freeBytes(),
                version()));
    }

    /** As the build wrote it into the jar. */
    private static String version() {
        return Objects.requireNonNullElse(MachineDesk.class.getPackage().getImplementationVersion(), "?");
    }
}
