package drylap.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.assembly.WorkLine;
import drylap.calendars.CalendarLinks;
import drylap.crews.AbsenceRequest;
import drylap.crews.Absences;
import drylap.crews.Shift;
import drylap.forecasts.ForecastChoices;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.HandResult;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRuns;
import drylap.planning.Publications;
import drylap.planning.SiteDraft;
import drylap.planning.SitesByHand;
import drylap.planning.StoredFolder;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.DemoPassword;
import drylap.security.NotAllowed;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.SignIns;
import drylap.security.TestPeople;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** The sample loaded and taken away, in a database of its own. */
@DbTest
@Import({DemoFolder.class, DemoWeek.class, DemoProgress.class, DemoPeople.class, SampleWeek.class, SampleTies.class})
@TestPropertySource(properties = {"drylap.demo=", "drylap.test-database=sample"})
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_CLASS)
class SampleWeekDbTests {
    /** What only grows: who changed what, and the names of migrations. */
    private static final Set<String> KEPT = Set.of("change_log", "flyway_schema_history");

    @Autowired
    SampleWeek sample;

    @Autowired
    DemoWeek week;

    @Autowired
    JobFolders folders;

    @Autowired
    SitesByHand sites;

    @Autowired
    Publications publications;

    @Autowired
    PlanRuns runs;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    Absences absences;

    @Autowired
    ForecastChoices forecasts;

    @Autowired
    CalendarLinks links;

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    TestPeople testPeople;

    @Autowired
    DSLContext db;

    @Autowired
    Clock clock;

    private Person me =
            new Person(new drylap.kernel.PersonId(0), "-", "-", Role.CONTRACTOR, Reach.EVERYWHERE, null, false);

    @BeforeEach
    void somebody_runs_the_firm() {
        me = testPeople.add(Role.CONTRACTOR, Reach.EVERYWHERE, null);
    }

    @Test
    void loading_and_taking_away_is_as_if_it_had_never_been_there() {
        Map<String, List<String>> before = rows();

        assertThat(sample.load(me)).isInstanceOf(SampleResult.Done.class);
        FolderId id = folders.list().getFirst().id();
        assertThat(sample.isThere()).isTrue();
        assertThat(publications.inWork()).contains(id);
        assertThat(rows()).isNotEqualTo(before);
        tryItOut(id);

        assertThat(sample.remove(me)).isInstanceOf(SampleResult.Done.class);
        assertThat(rows()).isEqualTo(before);
        assertThat(sample.isThere()).isFalse();
        assertThat(publications.inWork()).isEmpty();
    }

    /** What a person tries at the sample goes with it. */
    private void tryItOut(FolderId id) {
        JobFolder folder = folders.load(id);
        Shift shift = folder.shifts().getLast();
        absences.add(me, id, new AbsenceRequest(shift.crew(), shift.date(), null, null, "trying"));
        var site = folder.sites().getFirst().id();
        forecasts.choose(me, forecasts.of(me, site));
        links.make(me, id, folder.crews().getFirst().id());
    }

    @Test
    void nobody_signs_in_as_somebody_of_a_sample_that_was_loaded_at_a_wish() {
        sample.load(me);

        assertThat(people.demo()).isEmpty();
        assertThat(people.everyDemo()).extracting(Person::signInName).contains("ines", "olaf", "mara");
        assertThat(signIns.enter("olaf", DemoPassword.of("olaf"), "here"))
                .isInstanceOf(SignIns.Outcome.WrongNameOrPassword.class);
        sample.remove(me);
        assertThat(people.everyDemo()).isEmpty();
    }

    @Test
    void what_is_ones_own_beside_it_stays() {
        sample.load(me);
        assertThat(why(sample.load(me))).contains("There is a job folder already");
        JobFolder invented = folders.load(folders.list().getFirst().id());
        var like = invented.sites().getFirst();
        var mine = (HandResult.Saved)
                sites.add(me, null, new SiteDraft(like.id().value(), like.place(), like.zone()), List.of());
        Map<String, List<String>> both = rows();

        assertThat(sample.remove(me)).isInstanceOf(SampleResult.Done.class);

        assertThat(folders.list()).extracting(StoredFolder::id).containsExactly(mine.folder());
        assertThat(folders.load(mine.folder()).sites().getFirst().id()).isNotEqualTo(like.id());
        Map<String, List<String>> left = rows();
        left.forEach((table, lines) -> assertThat(both.get(table)).containsAll(lines));
        assertThat(why(sample.remove(me))).contains("There is no sample");
        db.execute("delete from job_folder where id = " + mine.folder().value());
    }

    @Test
    void it_stays_while_work_of_ones_own_hangs_on_it() {
        sample.load(me);
        FolderId id = folders.list().getFirst().id();
        var fitter = testPeople.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1");
        OpeningState open = states.states(id).stream()
                .filter(state -> state.next().stream().anyMatch(line -> line.trade() == drylap.kernel.Trade.WINDOW))
                .findFirst()
                .orElseThrow();
        WorkLine next = open.next().getFirst();
        log.mark(fitter, MarkRequest.done(UUID.randomUUID(), id, open.opening().id(), next.code(), clock.instant()));
        Map<String, List<String>> before = rows();

        assertThat(why(sample.remove(me)))
                .contains("1 marks at its openings that are not of the sample's own people")
                .contains("works in crew window-1 of the sample");
        assertThat(rows()).isEqualTo(before);

        db.execute("delete from step_mark where person_id = " + fitter.id().value());
        db.execute("delete from person where id = " + fitter.id().value());
        assertThat(sample.remove(me)).isInstanceOf(SampleResult.Done.class);
    }

    @Test
    void marks_and_photos_of_any_other_folder_cannot_go() {
        sample.load(me);
        FolderId id = folders.list().getFirst().id();
        db.execute("update job_folder set sample = false where id = " + id.value());

        assertThatExceptionOfType(org.springframework.dao.DataAccessException.class)
                .isThrownBy(() -> db.execute("delete from step_mark where folder_id = " + id.value()))
                .withMessageContaining("only grows");
        assertThat(why(sample.remove(me))).contains("There is no sample");
        db.execute("update job_folder set sample = true where id = " + id.value());
        sample.remove(me);
    }

    @Test
    void it_does_not_come_back_by_itself_and_crews_do_not_load_it() {
        var fitter = testPeople.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "w");
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> sample.load(fitter));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> sample.remove(fitter));
        sample.load(me);
        sample.remove(me);

        new DemoFolder("sample-data/harbour-week", folders, runs, week, folderNewness(), clock).load();

        assertThat(folders.list()).isEmpty();
    }

    private DemoFolder.Newness folderNewness() {
        return new DemoFolder.Newness(people, history);
    }

    @Autowired
    drylap.security.History history;

    private static String why(SampleResult result) {
        assertThat(result).isInstanceOf(SampleResult.Refused.class);
        return String.join(" ", ((SampleResult.Refused) result).why());
    }

    /** Every row of every table, as text in an order of its own. */
    private Map<String, List<String>> rows() {
        Map<String, List<String>> all = new TreeMap<>();
        for (Table<?> table : tables())
            all.put(
                    table.getName(),
                    db.fetch("select t::text from " + table.getQualifiedName() + " t").stream()
                            .map(row -> String.valueOf(row.get(0)))
                            .sorted()
                            .collect(Collectors.toList()));
        return all;
    }

    private List<Table<?>> tables() {
        return db.meta().getSchemas("public").stream()
                .flatMap(schema -> schema.getTables().stream())
                .filter(table -> table.getTableType() == org.jooq.TableOptions.TableType.TABLE)
                .filter(table -> !KEPT.contains(table.getName()))
                .toList();
    }
}
