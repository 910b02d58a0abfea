package drylap.whatif;

import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import drylap.whatif.WhatIfAnswer.Begun;
import drylap.whatif.WhatIfAnswer.Refused;
import java.time.Clock;
import java.time.Duration;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;

/**
 * Compares scenarios in the background for those who may have the folder planned. One comparison at a time, since it takes every
 * processor; a person's newest of a folder is remembered until this node ends, and nothing is stored.
 */
@Service
public final class WhatIfRuns implements DisposableBean {
    /** More columns than these nobody compares. */
    public static final int MOST_SCENARIOS = 6;

    private static final int REMEMBERED = 20;

    private final CurrentFolders folders;
    private final PlanRuns runs;
    private final Clock clock;
    private final Map<Key, WhatIfRun> asked = new LinkedHashMap<>();
    private final ExecutorService turns = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().name("what-if").daemon().factory());

    private record Key(PersonId who, FolderId folder) {}

    WhatIfRuns(CurrentFolders folders, PlanRuns runs, Clock clock) {
        this.folders = folders;
        this.runs = runs;
        this.clock = clock;
    }

    /** Compares the folder as it stands by now; what the person asked before of this folder is given up. */
    public WhatIfAnswer begin(Person who, FolderId id, List<Scenario> scenarios, Duration time) {
        who.demand(Operation.PROPOSE_PLAN);
        PlanRequest request = runs.asked(who, id, time);
        JobFolder folder = folders.load(id);
        Optional<Saying> trouble = trouble(folder, scenarios);
        if (trouble.isPresent()) return new Refused(trouble.get());
        WhatIfRun run = new WhatIfRun(clock.instant(), scenarios, request);
        remember(new Key(who.id(), id), run);
        turns.execute(() -> run.work(folder));
        return new Begun();
    }

    /** The person's newest comparison of the folder. */
    public Optional<WhatIfState> state(Person who, FolderId id) {
        return find(who, id).map(WhatIfRun::state);
    }

    /** Ends it with what it has. */
    public void stop(Person who, FolderId id) {
        find(who, id).ifPresent(WhatIfRun::stop);
    }

    private Optional<WhatIfRun> find(Person who, FolderId id) {
        who.demand(Operation.PROPOSE_PLAN);
        runs.demandProposal(who, id);
        synchronized (asked) {
            return Optional.ofNullable(asked.get(new Key(who.id(), id)));
        }
    }

    private void remember(Key key, WhatIfRun run) {
        synchronized (asked) {
            WhatIfRun before = asked.remove(key);
            if (before != null) before.stop();
            asked.put(key, run);
            var oldest = asked.entrySet().iterator();
            while (asked.size() > REMEMBERED && oldest.hasNext())
                if (oldest.next().getValue().ended()) oldest.remove();
        }
    }

    private static Optional<Saying> trouble(JobFolder folder, List<Scenario> scenarios) {
        if (scenarios.isEmpty()) return Optional.of(Saying.of("There is no scenario yet; at least one is needed."));
        if (scenarios.size() > MOST_SCENARIOS)
            return Optional.of(Saying.of(
                    "There are {0} scenarios; up to {1} are compared at a time.", scenarios.size(), MOST_SCENARIOS));
        Set<String> names = new HashSet<>(Set.of(Scenario.AS_IT_IS));
        return scenarios.stream()
                .flatMap(one -> trouble(folder, one, names.add(one.name())).stream())
                .findFirst();
    }

    private static Optional<Saying> trouble(JobFolder folder, Scenario one, boolean newName) {
        if (!newName)
            return Optional.of(Saying.of("Scenario {0}: the name is taken; each needs a name of its own.", one.name()));
        if (one.changes().isEmpty())
            return Optional.of(Saying.of("Scenario {0}: nothing is changed; it needs one change or more.", one.name()));
        try {
            one.applyTo(folder);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(Saying.of("Scenario {0} cannot be: {1}.", one.name(), Unfit.saying(e)));
        }
    }

    @Override
    public void destroy() {
        synchronized (asked) {
            asked.values().forEach(WhatIfRun::stop);
        }
        turns.shutdownNow();
    }
}
