package drylap.crews;

import static drylap.persistence.jooq.Tables.ABSENCE;
import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.awaitility.Awaitility.await;

import drylap.DbTest;
import drylap.crews.AbsenceResult.Added;
import drylap.crews.AbsenceResult.Refused;
import drylap.crews.AbsenceResult.Withdrawn;
import drylap.crews.AbsenceResult.WithdrawnMeanwhile;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFixture;
import drylap.planning.JobFolders;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.LocalTime;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class AbsencesDbTests {
    private static final CrewId CREW = new CrewId("window-1");

    @Autowired
    Absences absences;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    TestPeople people;

    @Autowired
    News news;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private Person scheduler = person(Role.SCHEDULER, Reach.EVERYWHERE);

    private static Person person(Role role, Reach reach) {
        return new Person(new drylap.kernel.PersonId(1), "p", "P", role, reach, null, false);
    }

    @BeforeEach
    void store() {
        folder = folders.save("absences", JobFixture.job(12, 1));
        scheduler = people.scheduler();
    }

    private static AbsenceRequest request(String from, String until) {
        return new AbsenceRequest(
                CREW, JobFixture.MONDAY, LocalTime.parse(from), LocalTime.parse(until), "van in the garage");
    }

    private long added() {
        var request = AbsenceRequest.wholeDay(CREW, JobFixture.MONDAY, "ill");
        return ((Added) absences.add(scheduler, folder, request)).absence().id();
    }

    @Test
    void an_absence_takes_the_shift_out_of_todays_folder_and_leaves_the_import_as_it_was() {
        added();

        assertThat(current.load(folder).shifts())
                .noneMatch(shift -> shift.crew().equals(CREW) && shift.date().equals(JobFixture.MONDAY))
                .hasSize(folders.load(folder).shifts().size() - 1);
        assertThat(current.load(scheduler, folder).shifts())
                .isEqualTo(current.load(folder).shifts());
    }

    @Test
    void part_of_a_day_cuts_the_shift() {
        absences.add(scheduler, folder, request("07:00", "09:30"));

        assertThat(current.load(folder).shifts())
                .filteredOn(shift -> shift.crew().equals(CREW) && shift.date().equals(JobFixture.MONDAY))
                .singleElement()
                .satisfies(shift -> assertThat(shift.start()).isEqualTo("09:30"));
    }

    /** The planner refuses a pin on a date without a shift, so one that is left there would stop all planning. */
    @Test
    void a_pin_on_a_day_of_absence_holds_nothing_any_more() {
        var imported = folders.load(folder);
        var opening = imported.openings().getFirst();
        var start = JobFixture.MONDAY.atTime(9, 0).atZone(JobFixture.ZONE).toInstant();
        var visit = new Visit(
                CREW,
                JobFixture.MONDAY,
                1,
                opening.facade(),
                opening.level(),
                opening.id(),
                Task.INSTALL,
                start,
                start.plusSeconds(7200));
        folder = folders.save("pinned", imported.withPublished(List.of(new PublishedVisit(visit, true))));
        assertThat(current.load(folder).published()).singleElement().matches(PublishedVisit::pinned);

        added();

        assertThat(current.load(folder).published()).singleElement().matches(one -> !one.pinned());
    }

    @Test
    void a_withdrawn_absence_gives_the_shift_back_and_stays_to_be_read() {
        long id = added();

        assertThat(absences.withdraw(scheduler, folder, id)).isInstanceOf(Withdrawn.class);
        assertThat(absences.of(scheduler, folder)).isEmpty();
        assertThat(current.load(folder).shifts()).isEqualTo(folders.load(folder).shifts());
        assertThat(db.fetchSingle(ABSENCE, ABSENCE.ID.eq(id)).getWithdrawnBy()).isEqualTo(scheduler.name());
    }

    @Test
    void who_withdraws_second_is_told_who_was_first() {
        long id = added();
        var other = people.scheduler();
        absences.withdraw(other, folder, id);

        assertThat(absences.withdraw(scheduler, folder, id))
                .isInstanceOfSatisfying(
                        WithdrawnMeanwhile.class,
                        first -> assertThat(first.by()).isEqualTo(other.name()));
    }

    @Test
    void a_request_that_fits_no_shift_is_refused_with_what_would_fit() {
        assertThat(absences.add(scheduler, folder, request("18:00", "19:00")))
                .isInstanceOfSatisfying(
                        Refused.class, no -> assertThat(no.why().words()).contains("from 07:00 to 17:00"));
        assertThat(absences.add(scheduler, folder, request("12:00", "09:00")))
                .isInstanceOfSatisfying(
                        Refused.class, no -> assertThat(no.why().words()).contains("12:00 is not before until 09:00"));
        var sunday = AbsenceRequest.wholeDay(CREW, JobFixture.MONDAY.plusDays(6), "ill");
        assertThat(absences.add(scheduler, folder, sunday))
                .isInstanceOfSatisfying(
                        Refused.class, no -> assertThat(no.why().words()).contains("has no shift on 2026-04-19"));
        assertThat(absences.add(scheduler, folder, AbsenceRequest.wholeDay(CREW, JobFixture.MONDAY, " ")))
                .isInstanceOf(Refused.class);
        assertThat(absences.withdraw(scheduler, folder, -1)).isInstanceOf(Refused.class);
        assertThat(absences.of(folder)).isEmpty();
    }

    @Test
    void only_a_scheduler_with_a_site_in_the_folder_sees_and_changes_absences() {
        var request = AbsenceRequest.wholeDay(CREW, JobFixture.MONDAY, "ill");
        var elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("another"))), null);
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, CREW.value());
        for (var who : List.of(elsewhere, crew)) {
            refused(() -> absences.add(who, folder, request));
            refused(() -> absences.withdraw(who, folder, 1));
            refused(() -> absences.of(who, folder));
        }
        assertThat(absences.of(folder)).isEmpty();
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(call);
    }

    @Test
    void an_absence_is_news_and_history() throws Exception {
        List<NewsItem> heard = new CopyOnWriteArrayList<>();
        try (var _ = news.listen(heard::add)) {
            added();
            await().untilAsserted(() ->
                    assertThat(heard).contains(new NewsItem("absence", folder.value(), null, CREW.value())));
        }
        assertThat(db.fetchValues(
                        CHANGE_LOG.WHAT, CHANGE_LOG.PERSON_ID.eq(scheduler.id().value())))
                .containsExactly("crew window-1 away all day on 2026-04-13: ill");
    }
}
