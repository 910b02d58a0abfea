package drylap.whatif;

import drylap.planning.JobFolder;
import drylap.planning.PlanProgress;
import drylap.planning.PlanRequest;
import drylap.whatif.WhatIfState.Course;
import drylap.whatif.WhatIfState.Status;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One comparison: planned on one thread, read and stopped from others. */
final class WhatIfRun {
    private static final Logger LOG = LoggerFactory.getLogger(WhatIfRun.class);

    private final Instant asked;
    private final List<Scenario> scenarios;
    private final PlanRequest request;
    private final Map<Integer, PlanProgress> progress = new ConcurrentHashMap<>();
    private Status status = Status.WAITING;
    private List<OutcomeFigures> outcomes = List.of();
    private volatile boolean stopped;

    WhatIfRun(Instant asked, List<Scenario> scenarios, PlanRequest request) {
        this.asked = asked;
        this.scenarios = List.copyOf(scenarios);
        this.request = request;
    }

    void work(JobFolder folder) {
        if (!begin()) return;
        try {
            var found = WhatIf.compare(folder, scenarios, request, progress::put, () -> stopped);
            end(stopped ? Status.STOPPED : Status.COMPARED, found);
        } catch (RuntimeException e) {
            LOG.error("a comparison of scenarios failed", e);
            end(Status.FAILED, List.of());
        }
    }

    private synchronized boolean begin() {
        if (status == Status.WAITING) status = Status.PLANNING;
        return status == Status.PLANNING;
    }

    private synchronized void end(Status how, List<Outcome> found) {
        outcomes = found.stream().map(OutcomeFigures::of).toList();
        status = how;
    }

    /** What is being planned ends with its best so far; what still waits for its turn never begins. */
    synchronized void stop() {
        stopped = true;
        if (status == Status.WAITING) status = Status.STOPPED;
    }

    synchronized boolean ended() {
        return status.ended();
    }

    synchronized WhatIfState state() {
        Duration limit = Objects.requireNonNull(request.time());
        return new WhatIfState(asked, scenarios, limit, status, courses(), outcomes);
    }

    private List<Course> courses() {
        List<Course> courses = new ArrayList<>(List.of(new Course(Scenario.AS_IT_IS, progress.get(0))));
        for (int i = 0; i < scenarios.size(); i++)
            courses.add(new Course(scenarios.get(i).name(), progress.get(i + 1)));
        return courses;
    }
}
