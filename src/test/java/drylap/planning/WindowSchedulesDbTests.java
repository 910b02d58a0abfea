package drylap.planning;

import static drylap.persistence.jooq.Tables.OPENING_CHANGE;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static drylap.persistence.jooq.Tables.WINDOW_SCHEDULE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.ScheduleResult.ChangedMeanwhile;
import drylap.planning.ScheduleResult.Taken;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Opening;
import drylap.sites.ScheduledOpenings;
import drylap.speech.Saying;
import drylap.windowschedule.Draft;
import drylap.windowschedule.OpeningOutcome.Kind;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.SiteWithWalls;
import drylap.windowschedule.Takings;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;

@DbTest
class WindowSchedulesDbTests {
    private static final String TITLES =
            "Mark,Qty,RO width (mm),RO height (mm),Floor,Elevation,Material,Method,Remarks\n";
    private static final String FIRST =
            TITLES + "A,2,900,1500,1,North,vinyl,A1,tempered\nB,,1000,1500,2,North,vinyl,A1,\n";
    private static final OpeningId A1 = new OpeningId("A-1");
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    WindowSchedules schedules;

    @Autowired
    ScheduledOpenings scheduled;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    private Person who = WallOfAll.SCHEDULER;
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_folder_is_stored() {
        who = people.scheduler();
        folder = folders.save("quay", SiteWithWalls.folder());
    }

    private Outcome outcome(Draft draft) {
        return Outcomes.of(draft, current.load(folder), schedules.begun(who, folder));
    }

    private ScheduleResult take(String csv) {
        Draft draft = SiteWithWalls.draft(csv);
        return schedules.take(who, folder, Takings.of(draft, outcome(draft)));
    }

    private Opening opening(String id) {
        return current.load(folder).openings().stream()
                .filter(one -> one.id().value().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private MarkResult mark(OpeningId id) {
        String line = states.of(who, folder, id).next().getFirst().code();
        return log.mark(who, MarkRequest.done(UUID.randomUUID(), folder, id, line, NOON));
    }

    @Test
    void openings_are_added_after_those_that_are_there_and_shown_at_once() {
        int before = folders.load(folder).openings().size();
        assertThat(take(FIRST)).isEqualTo(new Taken(3, 0));
        assertThat(folders.load(folder).openings())
                .hasSize(before + 3)
                .extracting(one -> one.id().value())
                .endsWith("A-1", "A-2", "B");
        assertThat(scheduled.note(folder, A1, Reach.EVERYWHERE).orElseThrow().remarks())
                .isEqualTo("tempered");
        assertThat(outcome(SiteWithWalls.draft(FIRST)).openings())
                .allSatisfy(one -> assertThat(one.kind()).isEqualTo(Kind.SAME));
    }

    @Test
    void a_second_schedule_changes_and_adds_takes_nothing_away_and_keeps_what_stood_before() {
        take(FIRST);
        assertThat(take(TITLES + "A,2,950,1500,1,North,vinyl,B1,\nC,,900,900,1,South,wood,A1,\n"))
                .isEqualTo(new Taken(1, 2));
        assertThat(opening("A-1").widthMm()).isEqualTo(950);
        assertThat(opening("A-2").method()).isEqualTo(Method.B1);
        assertThat(opening("B").widthMm()).isEqualTo(1000);
        assertThat(db.selectFrom(OPENING_CHANGE)
                        .where(OPENING_CHANGE.FOLDER_ID.eq(folder.value()), OPENING_CHANGE.WAS_WIDTH_MM.isNotNull())
                        .orderBy(OPENING_CHANGE.OPENING)
                        .fetch(row -> row.getOpening() + " " + row.getWasWidthMm() + " " + row.getWasMethod()))
                .containsExactly("A-1 900 A1", "A-2 900 A1");
    }

    @Test
    void marks_stay_and_an_opening_where_work_has_begun_is_left_as_it_is_unless_agreed() {
        take(FIRST);
        assertThat(mark(A1)).isInstanceOf(MarkResult.Marked.class);
        var done = states.of(who, folder, A1).done();
        String second = TITLES + "A,2,950,1500,1,North,vinyl,B1,\nB,,1000,1500,2,North,vinyl,A1,\n";

        assertThat(take(second)).isEqualTo(new Taken(0, 1));
        assertThat(opening("A-1").widthMm()).isEqualTo(900);
        assertThat(opening("A-2").widthMm()).isEqualTo(950);

        Draft agreed = SiteWithWalls.draft(second).agreeing(A1, true);
        assertThat(schedules.take(who, folder, Takings.of(agreed, outcome(agreed))))
                .isEqualTo(new Taken(0, 1));
        assertThat(opening("A-1").widthMm()).isEqualTo(950);
        assertThat(opening("A-1").method()).isEqualTo(Method.A1);
        assertThat(states.of(who, folder, A1).done()).isEqualTo(done);
        assertThat(db.fetchCount(STEP_MARK, STEP_MARK.FOLDER_ID.eq(folder.value())))
                .isEqualTo(1);
    }

    @Test
    void work_that_begins_while_a_person_looks_stops_all_of_it() {
        take(FIRST);
        Draft draft = SiteWithWalls.draft(TITLES + "A,2,950,1500,1,North,vinyl,A1,\nC,,900,900,1,South,wood,A1,\n");
        var seen = Takings.of(draft, outcome(draft));
        mark(A1);
        assertThat(schedules.take(who, folder, seen)).isEqualTo(new ChangedMeanwhile(Saying.asItIs("A-1")));
        assertThat(opening("A-2").widthMm()).isEqualTo(900);
        assertThat(current.load(folder).openings())
                .noneMatch(one -> one.id().value().equals("C"));
        assertThat(db.fetchCount(WINDOW_SCHEDULE, WINDOW_SCHEDULE.FOLDER_ID.eq(folder.value())))
                .isEqualTo(1);
    }

    @Test
    void of_two_schedules_seen_at_once_the_second_is_told() {
        Draft draft = SiteWithWalls.draft(FIRST);
        var seen = Takings.of(draft, outcome(draft));
        assertThat(schedules.take(who, folder, seen)).isInstanceOf(Taken.class);
        assertThat(schedules.take(who, folder, seen)).isEqualTo(new ChangedMeanwhile(Saying.asItIs("A-1, A-2, B")));
    }

    @Test
    void only_who_may_bring_in_folders_with_the_site_may_and_what_was_changed_is_never_rewritten() {
        Draft draft = SiteWithWalls.draft(FIRST);
        var taking = Takings.of(draft, outcome(draft));
        Person elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("M"))), null);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> schedules.take(elsewhere, folder, taking));
        schedules.take(who, folder, taking);
        assertThatThrownBy(() -> db.update(WINDOW_SCHEDULE)
                        .set(WINDOW_SCHEDULE.FILE, "x")
                        .execute())
                .isInstanceOf(DataAccessException.class)
                .hasMessageContaining("only grows");
    }
}
