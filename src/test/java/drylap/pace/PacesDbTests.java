package drylap.pace;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.LABOUR_ANSWER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.assembly.WorkLine;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFixture;
import drylap.planning.JobFolders;
import drylap.planning.LabourResult.Answered;
import drylap.planning.LabourResult.AnsweredMeanwhile;
import drylap.planning.LabourResult.Refused;
import drylap.planning.LabourTable;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult.Marked;
import drylap.progress.StepLog;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Opening;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;

@DbTest
class PacesDbTests {
    private static final CrewId CREW = new CrewId("window-1");

    @Autowired
    Paces paces;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    StepLog log;

    @Autowired
    TestPeople people;

    @Autowired
    Clock clock;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private List<Opening> openings = List.of();
    private LabourTable labour = new LabourTable(List.of());
    private Method method = Method.B;
    private Person scheduler =
            new Person(new drylap.kernel.PersonId(1), "p", "P", Role.SCHEDULER, Reach.EVERYWHERE, null, false);

    @BeforeEach
    void a_crew_that_takes_half_as_long_again_as_planned() {
        var job = JobFixture.job(60, 1);
        labour = job.labour();
        method = job.openings().getFirst().method();
        folder = folders.save("paces", job);
        scheduler = people.scheduler();
        openings = job.openings().stream()
                .filter(opening -> opening.method() == method && opening.done() == 0)
                .limit(12)
                .toList();
        assertThat(openings).hasSize(12);
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, CREW.value());
        Instant noon = clock.instant().truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(30));
        for (int i = 0; i < openings.size(); i++)
            install(crew, openings.get(i), noon.plus(Duration.ofDays(i)).plus(Duration.ofHours(18)));
    }

    private void install(Person crew, Opening opening, Instant start) {
        var lines = opening.workList().lines().stream()
                .filter(WorkLine::installBlock)
                .toList();
        tick(crew, opening, "RO", start);
        double minutes = 1.5 * labour.installMinutes(opening);
        for (int i = 1; i <= lines.size(); i++)
            tick(
                    crew,
                    opening,
                    lines.get(i - 1).code(),
                    start.plusSeconds(Math.round(60 * minutes * i / lines.size())));
    }

    private void tick(Person crew, Opening opening, String line, Instant at) {
        assertThat(log.mark(crew, MarkRequest.done(UUID.randomUUID(), folder, opening.id(), line, at)))
                .isInstanceOf(Marked.class);
    }

    private PaceSheet.OfMethod seen() {
        return paces.of(scheduler, folder).of(method).orElseThrow();
    }

    private int minutesNow() {
        return current.load(folder).labour().installMinutes(openings.getFirst());
    }

    @Test
    void a_slow_crew_is_seen_and_suggested_but_changes_nothing_by_itself() {
        var sheet = paces.of(scheduler, folder);

        assertThat(sheet.leftOut()).isEmpty();
        assertThat(sheet.cells())
                .isNotEmpty()
                .allSatisfy(cell -> assertThat(cell.cell().crew()).isEqualTo(CREW));
        assertThat(seen().suggested()).isTrue();
        assertThat(seen().lately().openings()).isEqualTo(12);
        // drawn to the table, so short of the 1.5 that was put in
        assertThat(seen().factor().doubleValue()).isBetween(1.35, 1.5);
        assertThat(current.load(folder).labour()).isEqualTo(labour);
    }

    @Test
    void what_is_accepted_lies_over_the_labour_table_until_it_is_withdrawn() {
        int before = minutesNow();
        var seen = seen();
        assertThat(paces.accept(scheduler, folder, seen)).isInstanceOf(Answered.class);

        assertThat(minutesNow())
                .isBetween(
                        (int) (before * seen.factor().doubleValue()) - 1,
                        (int) (before * seen.factor().doubleValue()) + 2);
        assertThat(folders.load(folder).labour()).isEqualTo(labour);
        assertThat(current.load(folder).labour().row(Task.INSTALL, method).setupSiteMin())
                .isEqualTo(labour.row(Task.INSTALL, method).setupSiteMin());
        var now = seen();
        assertThat(now.suggested()).isFalse();
        assertThat(now.lately().planned())
                .isCloseTo(now.lately().minutes(), org.assertj.core.data.Percentage.withPercentage(2));

        var inForce = now.inForce().orElseThrow();
        assertThat(inForce.by()).isEqualTo(scheduler.name());
        assertThat(paces.withdraw(scheduler, folder, inForce, now.seenId())).isInstanceOf(Answered.class);
        assertThat(minutesNow()).isEqualTo(before);
        assertThat(seen().suggested()).isTrue();
        assertThat(paces.withdraw(scheduler, folder, inForce, seen().seenId())).isInstanceOf(Refused.class);
        assertThat(db.fetchValues(
                        CHANGE_LOG.WHAT, CHANGE_LOG.PERSON_ID.eq(scheduler.id().value())))
                .hasSize(2)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("install minutes of method %s accepted".formatted(method))
                        .endsWith("learnt from 12 openings"))
                .anySatisfy(line -> assertThat(line).endsWith("set back to the labour table"));
    }

    @Test
    void what_is_declined_changes_nothing_and_is_not_suggested_again() {
        assertThat(paces.decline(scheduler, folder, seen())).isInstanceOf(Answered.class);

        assertThat(current.load(folder).labour()).isEqualTo(labour);
        assertThat(seen().suggested()).isFalse();
    }

    @Test
    void an_answer_to_what_somebody_answered_meanwhile_is_told_so() {
        var seen = seen();
        paces.decline(people.scheduler(), folder, seen);

        assertThat(paces.accept(scheduler, folder, seen)).isInstanceOf(AnsweredMeanwhile.class);
        assertThat(current.load(folder).labour()).isEqualTo(labour);
    }

    @Test
    void a_factor_that_the_log_does_not_say_is_refused() {
        var seen = seen();
        var made = new PaceSheet.OfMethod(
                seen.method(), new java.math.BigDecimal("0.500"), seen.lately(), true, seen.inForce(), seen.newest());

        assertThat(paces.accept(scheduler, folder, made))
                .isInstanceOfSatisfying(
                        Refused.class, no -> assertThat(no.why().words()).contains("look again"));
        assertThat(current.load(folder).labour()).isEqualTo(labour);
    }

    @Test
    void only_a_scheduler_of_every_site_answers_and_only_one_of_a_site_here_looks() {
        var seen = seen();
        SiteId first = openings.getFirst().facade().site();
        var ofOne = people.add(Role.SCHEDULER, Reach.of(List.of(first)), null);
        var elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("another"))), null);
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, CREW.value());
        boolean oneSite = current.load(folder).sites().size() == 1;
        for (var who : oneSite ? List.of(elsewhere, crew) : List.of(ofOne, elsewhere, crew))
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> paces.accept(who, folder, seen));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> paces.of(crew, folder));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> paces.of(elsewhere, folder));
        assertThat(current.load(folder).labour()).isEqualTo(labour);
    }

    @Test
    void answers_are_only_ever_added() {
        paces.accept(scheduler, folder, seen());

        assertThatThrownBy(() -> db.update(LABOUR_ANSWER)
                        .set(LABOUR_ANSWER.OPENINGS, 1)
                        .where(LABOUR_ANSWER.FOLDER_ID.eq(folder.value()))
                        .execute())
                .isInstanceOf(DataAccessException.class);
    }
}
