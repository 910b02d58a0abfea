package drylap.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.intake.GeneratedFolder;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Trade;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.whatif.WhatIfState.Course;
import drylap.whatif.WhatIfState.Status;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class WhatIfRunsDbTests {
    private static final Duration SHORT = Duration.ofMillis(300);
    private static final Duration LONG = Duration.ofMinutes(10);
    private static final Duration PATIENCE = Duration.ofSeconds(120);

    @Autowired
    WhatIfRuns comparisons;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    Plans plans;

    @Autowired
    Publications publications;

    @Autowired
    TestPeople people;

    private final JobFolder folder = GeneratedFolder.of(24, 2, 1);
    private FolderId id = new FolderId(0);
    private Person scheduler = new Person(new PersonId(0), "-", "-", Role.SCHEDULER, Reach.EVERYWHERE, null, false);

    @BeforeEach
    void store_a_folder() {
        id = folders.save("week", folder);
        scheduler = people.scheduler();
    }

    @Test
    void scenarios_are_planned_beside_the_folder_and_nothing_that_is_stored_changes() {
        var plan = plans.save(
                id, Planner.standard().plan(folder, new PlanRequest(null, null, 50L, 1), _ -> {}, () -> false));
        publications.publish(scheduler, id, plan, null);
        JobFolder before = current.load(id);

        assertThat(comparisons.begin(scheduler, id, List.of(more(), without()), SHORT))
                .isEqualTo(new WhatIfAnswer.Begun());
        WhatIfState end = await(state -> state.status().ended());

        assertThat(end.status()).isEqualTo(Status.COMPARED);
        assertThat(end.outcomes())
                .extracting(OutcomeFigures::name)
                .containsExactly("as it is", "more", "without")
                .isEqualTo(end.courses().stream().map(Course::name).toList());
        assertThat(end.courses()).allSatisfy(one -> assertThat(one.progress()).isNotNull());
        assertThat(end.outcomes()).allSatisfy(one -> assertThat(one.handovers()).hasSameSizeAs(folder.facades()));
        assertThat(current.load(id)).isEqualTo(before);
        assertThat(publications.latest(id).orElseThrow().plan()).isEqualTo(plan);
        assertThat(plans.latest(id)).contains(plans.load(plan));
    }

    @Test
    void what_a_scenario_takes_away_is_missing_from_its_plan_alone() {
        Set<CrewId> siding = folder.crews().stream()
                .filter(crew -> crew.trade() == Trade.SIDING)
                .map(Crew::id)
                .collect(Collectors.toSet());
        List<Change> days = folder.shifts().stream()
                .filter(shift -> siding.contains(shift.crew()))
                .<Change>map(shift -> new DropDay(shift.date(), shift.crew(), null))
                .toList();

        comparisons.begin(scheduler, id, List.of(new Scenario("no siding", days)), SHORT);

        List<OutcomeFigures> outcomes = await(state -> state.status().ended()).outcomes();
        assertThat(outcomes.getFirst().notPlanned()).isZero();
        assertThat(outcomes.getLast().notPlanned()).isEqualTo(folder.openings().size());
        assertThat(outcomes.getLast().handovers())
                .allSatisfy(wall -> assertThat(wall.cladBy()).isNull());
    }

    @Test
    void what_cannot_be_is_refused_with_its_name_before_anything_is_planned() {
        Scenario nobody = new Scenario("nobody", List.of(new DropDay(shift().date(), new CrewId("none"), null)));

        assertThat(refused(List.of(more(), nobody))).contains("Scenario nobody cannot be", "no crew of none");
        assertThat(refused(List.of())).contains("at least one");
        assertThat(refused(List.of(new Scenario("empty", List.of())))).contains("Scenario empty", "one change or more");
        assertThat(refused(List.of(more(), more()))).contains("Scenario more", "name of its own");
        assertThat(refused(List.of(new Scenario(Scenario.AS_IT_IS, more().changes()))))
                .contains("name is taken");
        assertThat(refused(Collections.nCopies(7, more()))).contains("7 scenarios", "up to 6");
        assertThat(comparisons.state(scheduler, id)).isEmpty();
    }

    @Test
    void a_comparison_that_is_stopped_ends_with_what_it_has() {
        comparisons.begin(scheduler, id, List.of(more()), LONG);
        await(state -> state.courses().getFirst().progress() != null);

        comparisons.stop(scheduler, id);

        WhatIfState end = await(state -> state.status().ended());
        assertThat(end.status()).isEqualTo(Status.STOPPED);
        assertThat(end.outcomes()).hasSize(2);
    }

    @Test
    void a_newer_question_gives_up_the_older_one() {
        comparisons.begin(scheduler, id, List.of(more()), LONG);
        await(state -> state.status() == Status.PLANNING);

        comparisons.begin(scheduler, id, List.of(without()), SHORT);

        WhatIfState end = await(state -> state.status() == Status.COMPARED);
        assertThat(end.scenarios()).containsExactly(without());
    }

    @Test
    void one_that_waits_for_another_person_may_be_given_up_at_once() {
        comparisons.begin(scheduler, id, List.of(more()), LONG);
        Person second = people.scheduler();
        comparisons.begin(second, id, List.of(without()), LONG);
        assertThat(comparisons.state(second, id).orElseThrow().status()).isEqualTo(Status.WAITING);

        comparisons.stop(second, id);
        assertThat(comparisons.state(second, id).orElseThrow().status()).isEqualTo(Status.STOPPED);

        comparisons.stop(scheduler, id);
        await(state -> state.status().ended());
    }

    @Test
    void each_sees_their_own_and_only_those_who_may_plan_every_site_ask() {
        comparisons.begin(scheduler, id, List.of(more()), SHORT);
        assertThat(comparisons.state(people.scheduler(), id)).isEmpty();
        await(state -> state.status().ended());

        var oneSite = Reach.of(List.of(folder.sites().getFirst().id()));
        for (Person other : List.of(
                people.add(Role.SCHEDULER, oneSite, null), people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"))) {
            assertThatExceptionOfType(NotAllowed.class)
                    .isThrownBy(() -> comparisons.begin(other, id, List.of(more()), SHORT));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> comparisons.state(other, id));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> comparisons.stop(other, id));
        }
    }

    private Shift shift() {
        return folder.shifts().getFirst();
    }

    private Scenario more() {
        return new Scenario("more", List.of(new AddCrew(new CrewId("more"), shift().crew(), shift().date())));
    }

    private Scenario without() {
        return new Scenario("without", List.of(new DropDay(shift().date(), shift().crew(), null)));
    }

    private String refused(List<Scenario> scenarios) {
        return ((WhatIfAnswer.Refused) comparisons.begin(scheduler, id, scenarios, SHORT))
                .why()
                .words();
    }

    private WhatIfState await(Predicate<WhatIfState> wanted) {
        return Awaitility.await()
                .atMost(PATIENCE)
                .until(() -> comparisons.state(scheduler, id).orElseThrow(), wanted);
    }
}
