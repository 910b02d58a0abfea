package drylap.demo;

import drylap.kernel.FolderId;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.People;
import drylap.security.Person;
import java.time.Clock;
import java.util.EnumMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Lets the sample begin in the middle of its week: a plan of it is published, and what is past of that is done. */
@Component
class DemoWeek {
    /** A second or two of work. */
    private static final PlanRequest FROM_MONDAY = new PlanRequest(null, null, 20_000L, 1);

    private static final Map<Trade, String> WHO =
            Map.of(Trade.WINDOW, "mara", Trade.TESTER, "kit", Trade.WRAP, "sol", Trade.SIDING, "pia");

    private final Planner planner;
    private final Plans plans;
    private final Publications publications;
    private final DemoProgress progress;
    private final People people;
    private final Clock clock;

    DemoWeek(
            Planner planner,
            Plans plans,
            Publications publications,
            DemoProgress progress,
            People people,
            Clock clock) {
        this.planner = planner;
        this.plans = plans;
        this.publications = publications;
        this.progress = progress;
        this.people = people;
        this.clock = clock;
    }

    void begin(FolderId id, JobFolder folder) {
        Plan plan = planner.plan(folder, FROM_MONDAY, _ -> {}, () -> false);
        publications.publishSample(id, plans.save(id, plan, folder));
        progress.work(id, plan.visits(), people(), clock.instant());
    }

    /** Without sample people nothing was done yet. */
    private Map<Trade, Person> people() {
        Map<Trade, Person> who = new EnumMap<>(Trade.class);
        for (Person one : people.everyDemo())
            WHO.forEach((trade, name) -> {
                if (one.signInName().equals(name)) who.put(trade, one);
            });
        return who;
    }
}
