package drylap.ui.planner;

import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.UIScope;
import drylap.intake.ScenarioReader;
import drylap.intake.ScenarioReading;
import drylap.kernel.FolderId;
import drylap.planning.PlanRuns;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import drylap.ui.drawn.FolderShown;
import drylap.whatif.Change;
import drylap.whatif.Scenario;
import drylap.whatif.WhatIfAnswer;
import drylap.whatif.WhatIfRuns;
import drylap.whatif.WhatIfState;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The scenarios that someone puts together, as long as the page is open, and their comparisons. */
@UIScope
@SpringComponent
class WhatIfDesk {
    private final WhatIfRuns comparisons;
    private final PlanRuns plans;
    private final SignedIn signedIn;
    private final Map<FolderId, List<Scenario>> scenarios = new HashMap<>();

    WhatIfDesk(WhatIfRuns comparisons, PlanRuns plans, SignedIn signedIn) {
        this.comparisons = comparisons;
        this.plans = plans;
        this.signedIn = signedIn;
    }

    /** Planning takes the right at every site of the folder. */
    boolean mayCompare(FolderShown shown) {
        return plans.mayPropose(signedIn.person(), shown.stored().id());
    }

    /** On a page that was just opened, those that were compared last. */
    List<Scenario> scenarios(FolderShown shown) {
        return scenarios.computeIfAbsent(
                shown.stored().id(),
                _ -> new ArrayList<>(state(shown).map(WhatIfState::scenarios).orElse(List.of())));
    }

    /** Adds to the scenario of that name, or begins it; answers why not, where the folder does not allow it. */
    Optional<Saying> add(FolderShown shown, String name, Change change) {
        List<Scenario> all = scenarios(shown);
        int place = all.stream().map(Scenario::name).toList().indexOf(name);
        if (place < 0 && all.size() == WhatIfRuns.MOST_SCENARIOS)
            return Optional.of(Saying.of(
                    "Scenario: there are {0} already; take one out, or add to one of them.",
                    WhatIfRuns.MOST_SCENARIOS));
        List<Change> changes =
                new ArrayList<>(place < 0 ? List.of() : all.get(place).changes());
        changes.add(change);
        Scenario grown = new Scenario(name, changes);
        try {
            grown.applyTo(shown.folder());
        } catch (IllegalArgumentException e) {
            return Optional.of(Saying.of("The change cannot be made: {0}. Choose what the job has.", Unfit.saying(e)));
        }
        if (place < 0) all.add(grown);
        else all.set(place, grown);
        return Optional.empty();
    }

    void takeOut(FolderShown shown, Scenario scenario) {
        scenarios(shown).remove(scenario);
    }

    /** A scenario without a change is none. */
    void takeOut(FolderShown shown, Scenario scenario, int change) {
        List<Change> left = new ArrayList<>(scenario.changes());
        left.remove(change);
        if (left.isEmpty()) takeOut(shown, scenario);
        else scenarios(shown).replaceAll(one -> one.equals(scenario) ? new Scenario(one.name(), left) : one);
    }

    /** Puts the scenarios of a file in the place of all; answers what is wrong with it, a problem a line. */
    List<Saying> read(FolderShown shown, String file, byte[] text) {
        return switch (ScenarioReader.readAlone(file, text, shown.folder())) {
            case ScenarioReading.Refused(var problems) -> FileProblems.of(problems);
            case ScenarioReading.Read(var read)
            when read.size() > WhatIfRuns.MOST_SCENARIOS ->
                List.of(Saying.of(
                        "{0}: has {1} scenarios; accepted: up to {2}", file, read.size(), WhatIfRuns.MOST_SCENARIOS));
            case ScenarioReading.Read(var read) -> {
                scenarios.put(shown.stored().id(), new ArrayList<>(read));
                yield List.of();
            }
        };
    }

    WhatIfAnswer begin(FolderShown shown, long seconds) {
        return comparisons.begin(signedIn.person(), shown.stored().id(), scenarios(shown), Duration.ofSeconds(seconds));
    }

    void stop(FolderShown shown) {
        comparisons.stop(signedIn.person(), shown.stored().id());
    }

    Optional<WhatIfState> state(FolderShown shown) {
        return comparisons.state(signedIn.person(), shown.stored().id());
    }
}
