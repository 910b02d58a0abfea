package drylap.planning;

import static drylap.persistence.jooq.Tables.PUBLICATION;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Task;
import drylap.planning.PublishResult.Published;
import drylap.planning.PublishResult.PublishedMeanwhile;
import drylap.progress.MarkRequest;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;

@DbTest
class PublicationsDbTests {
    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    Plans plans;

    @Autowired
    Publications publications;

    @Autowired
    WindowSchedules schedules;

    @Autowired
    Pins pins;

    @Autowired
    StepLog log;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private PlanId plan = new PlanId(0);

    @BeforeEach
    void a_folder_with_a_plan_far_ahead() {
        folder = folders.save("published", WallOfAll.folder());
        plan = plans.save(folder, planOf(visit("north-0", WallOfAll.NORTH, 8), visit("south-1", WallOfAll.SOUTH, 10)));
    }

    @Test
    void a_published_plan_is_what_people_have_and_its_folder_the_one_in_work() {
        assertThat(publications.publish(WallOfAll.SCHEDULER, folder, plan, null))
                .isInstanceOf(Published.class);

        assertThat(publications.inWork()).contains(folder);
        assertThat(current.load(folder).published())
                .extracting(one -> one.visit().opening().value())
                .containsExactly("north-0", "south-1");
    }

    @Test
    void a_visit_on_a_level_that_a_window_schedule_moved_its_opening_from_is_planned_anew() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        Opening was = current.load(folder).openings().stream()
                .filter(one -> one.id().value().equals("north-0"))
                .findFirst()
                .orElseThrow();
        Opening moved =
                was.designed(was.facade(), was.level() + 1, was.widthMm(), was.heightMm(), was.frame(), was.method());
        assertThat(schedules.take(
                        WallOfAll.SCHEDULER,
                        folder,
                        new ScheduleTaking(
                                was.facade().site(),
                                "s.csv",
                                List.of(),
                                List.of(was),
                                List.of(moved),
                                List.of(),
                                Map.of())))
                .isEqualTo(new ScheduleResult.Taken(0, 1));

        assertThat(current.load(folder).published())
                .extracting(one -> one.visit().opening().value())
                .containsExactly("south-1");
        assertThat(publications.latest(folder).orElseThrow().plan()).isEqualTo(plan);
    }

    @Test
    void of_two_who_publish_at_once_one_hears_of_the_other() throws Exception {
        var other = plans.save(folder, planOf(visit("north-0", WallOfAll.NORTH, 9)));
        var start = new CyclicBarrier(2);
        Callable<PublishResult> one = () -> {
            start.await();
            return publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        };
        Callable<PublishResult> two = () -> {
            start.await();
            return publications.publish(WallOfAll.SCHEDULER, folder, other, null);
        };

        List<PublishResult> results;
        try (var threads = Executors.newFixedThreadPool(2)) {
            results = threads.invokeAll(List.of(one, two)).stream()
                    .map(future -> future.resultNow())
                    .toList();
        }

        assertThat(results)
                .hasAtLeastOneElementOfType(Published.class)
                .hasAtLeastOneElementOfType(PublishedMeanwhile.class);
        assertThat(db.fetchCount(PUBLICATION, PUBLICATION.FOLDER_ID.eq(folder.value())))
                .isEqualTo(1);
    }

    @Test
    void the_next_publication_follows_the_one_that_was_seen() {
        var first = (Published) publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        var next = plans.save(folder, planOf());

        assertThat(publications.publish(WallOfAll.SCHEDULER, folder, next, null))
                .isInstanceOf(PublishedMeanwhile.class);
        assertThat(publications.publish(
                        WallOfAll.SCHEDULER, folder, next, first.publication().id()))
                .isInstanceOf(Published.class);
        assertThat(publications.latest(folder).orElseThrow().plan()).isEqualTo(next);
    }

    @Test
    void publishing_needs_every_site_and_a_plan_of_the_folder() {
        var ofNorth = people.add(Role.SCHEDULER, Reach.of(Set.of(WallOfAll.NORTH)), null);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> publications.publish(ofNorth, folder, plan, null));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> publications.publish(WallOfAll.WINDOW, folder, plan, null));
        var elsewhere = folders.save("elsewhere", WallOfAll.folder());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> publications.publish(WallOfAll.SCHEDULER, elsewhere, plan, null));
    }

    @Test
    void a_person_of_one_site_gets_no_row_of_another() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);

        JobFolder seen = current.load(WallOfAll.WINDOW, folder);

        assertThat(seen.sites()).extracting(site -> site.id()).containsExactly(WallOfAll.NORTH);
        assertThat(seen.facades()).allMatch(facade -> facade.id().site().equals(WallOfAll.NORTH));
        assertThat(seen.openings()).allMatch(opening -> opening.facade().site().equals(WallOfAll.NORTH));
        assertThat(seen.published()).allMatch(one -> one.visit().facade().site().equals(WallOfAll.NORTH));
        assertThat(plans.load(WallOfAll.WINDOW, plan).plan().visits())
                .extracting(visit -> visit.opening().value())
                .containsExactly("north-0");
    }

    @Test
    void crews_see_the_folder_in_work_only() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        var draft = folders.save("draft", WallOfAll.folder());

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> current.load(WallOfAll.WINDOW, draft));
        assertThat(current.load(WallOfAll.SCHEDULER, draft).sites()).hasSize(2);
    }

    @Test
    void what_is_done_is_no_longer_to_be_planned() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        Person who = WallOfAll.WINDOW;
        current.load(folder).openings().getFirst().workList().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .forEach(line -> log.mark(
                        who,
                        MarkRequest.done(
                                UUID.randomUUID(),
                                folder,
                                current.load(folder).openings().getFirst().id(),
                                line.code(),
                                Instant.EPOCH)));

        var now = current.load(folder);

        assertThat(now.openings().getFirst().installed()).isTrue();
        assertThat(now.openings().getFirst().tasks()).doesNotContain(Task.INSTALL);
        assertThat(now.published())
                .extracting(one -> one.visit().opening().value())
                .containsExactly("south-1");
    }

    @Test
    void a_pinned_visit_is_published_as_it_was_pinned() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);
        Visit moved = visit("north-0", WallOfAll.NORTH, 11);
        pins.pin(WallOfAll.SCHEDULER, folder, moved);

        assertThat(current.load(folder).published().getFirst()).satisfies(one -> {
            assertThat(one.pinned()).isTrue();
            assertThat(one.visit().start()).isEqualTo(moved.start());
        });
        pins.unpin(WallOfAll.SCHEDULER, folder, moved);
        assertThat(current.load(folder).published().getFirst().pinned()).isFalse();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> pins.pin(WallOfAll.WINDOW, folder, moved));
    }

    @Test
    void a_publication_of_another_folder_is_not_followed() {
        var other = folders.save("other", WallOfAll.folder());
        var otherPlan = plans.save(other, planOf());
        var theirs = (Published) publications.publish(WallOfAll.SCHEDULER, other, otherPlan, null);

        assertThatThrownBy(() -> publications.publish(
                        WallOfAll.SCHEDULER, folder, plan, theirs.publication().id()))
                .isInstanceOf(DataAccessException.class);
    }

    @Test
    void the_site_of_a_pin_is_that_of_the_opening_whatever_the_visit_says() {
        var ofNorth = people.add(Role.SCHEDULER, Reach.of(Set.of(WallOfAll.NORTH)), null);
        var disguised = visit("south-1", WallOfAll.NORTH, 11);

        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> pins.pin(ofNorth, folder, disguised));
    }

    @Test
    void a_publication_is_never_changed() {
        publications.publish(WallOfAll.SCHEDULER, folder, plan, null);

        assertThatThrownBy(() -> db.update(PUBLICATION)
                        .set(PUBLICATION.PERSON, "someone else")
                        .where(PUBLICATION.FOLDER_ID.eq(folder.value()))
                        .execute())
                .isInstanceOf(DataAccessException.class);
    }

    private static Plan planOf(Visit... visits) {
        Instant start = Instant.parse("2099-04-13T15:00:00Z");
        return new Plan(
                start,
                start.plusSeconds(86_400),
                List.of(visits),
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
    }

    private static Visit visit(String opening, drylap.kernel.SiteId site, int hour) {
        Instant start = Instant.parse("2099-04-13T15:00:00Z").plusSeconds(hour * 3600L);
        return new Visit(
                new CrewId("window-crew"),
                LocalDate.of(2099, 4, 13),
                hour,
                new drylap.kernel.FacadeId(site, "street"),
                1,
                new drylap.kernel.OpeningId(opening),
                Task.INSTALL,
                start,
                start.plusSeconds(3600));
    }
}
