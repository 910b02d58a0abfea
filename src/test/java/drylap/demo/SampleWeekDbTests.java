package drylap.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.calendars.CalendarLinks;
import drylap.crews.AbsenceRequest;
import drylap.crews.AbsenceResult;
import drylap.crews.Absences;
import drylap.crews.Shift;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastChoices;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Trade;
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
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.SignIns;
import drylap.security.TestPeople;
import drylap.speech.Saying;
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
import org.springframework.dao.DataAccessException;
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
    History history;

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

    /** One story, since to load a week and plan it takes longer than all the rest. */
    @Test
    void a_sample_comes_at_a_wish_holds_while_own_work_hangs_on_it_and_goes_as_if_it_had_never_been() {
        var fitter = testPeople.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1");
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> sample.load(fitter));
        assertThat(why(sample.remove(me))).contains("There is no sample");
        Map<String, List<String>> before = rows();

        assertThat(sample.load(me)).isInstanceOf(SampleResult.Done.class);
        assertThat(sample.isThere()).isTrue();
        FolderId id = folders.list().getFirst().id();
        assertThat(publications.inWork()).contains(id);
        assertThat(states.states(id)).hasSizeGreaterThan(100);
        nobodySignsInByAKnownPassword();
        tryItOut(id);
        FolderId mine = ownSiteOfTheSameName(id);
        itStaysWhileOwnWorkHangsOnIt(id, fitter);
        noOtherLogCanGo(id);

        db.execute("update person set crew = 'mine' where id = " + fitter.id().value());
        assertThat(sample.remove(me)).isInstanceOf(SampleResult.Done.class);

        assertThat(sample.isThere()).isFalse();
        assertThat(folders.list()).extracting(StoredFolder::id).containsExactly(mine);
        db.execute("delete from job_folder where id = " + mine.value());
        db.execute(
                "update person set crew = 'window-1' where id = " + fitter.id().value());
        assertThat(rows()).isEqualTo(before);
        itDoesNotComeBackByItself();
    }

    private void nobodySignsInByAKnownPassword() {
        assertThat(people.demo()).isEmpty();
        assertThat(people.everyDemo()).extracting(Person::signInName).contains("ines", "olaf", "mara");
        assertThat(signIns.enter("olaf", DemoPassword.of("olaf"), "here"))
                .isInstanceOf(SignIns.Outcome.WrongNameOrPassword.class);
        db.execute("delete from sign_in_failure");
    }

    /** What a person tries at the sample goes with it. */
    private void tryItOut(FolderId id) {
        JobFolder folder = folders.load(id);
        Shift shift = folder.shifts().getLast();
        var site = folder.sites().getFirst().id();
        assertThat(absences.add(me, id, new AbsenceRequest(shift.crew(), shift.date(), null, null, "trying")))
                .isInstanceOf(AbsenceResult.Added.class);
        assertThat(forecasts.choose(me, forecasts.of(me, site))).isInstanceOf(ForecastChoiceResult.Chosen.class);
        links.make(me, id, folder.crews().getFirst().id());
        assertThat(why(sample.load(me))).contains("There is a job folder already");
    }

    private FolderId ownSiteOfTheSameName(FolderId id) {
        var like = folders.load(id).sites().getFirst();
        var mine = (HandResult.Saved)
                sites.add(me, null, new SiteDraft(like.id().value(), "", like.place(), like.zone()), List.of());
        assertThat(folders.load(mine.folder()).sites().getFirst().id()).isNotEqualTo(like.id());
        return mine.folder();
    }

    private void itStaysWhileOwnWorkHangsOnIt(FolderId id, Person fitter) {
        OpeningState open = states.states(id).stream()
                .filter(state ->
                        !state.next().isEmpty() && state.next().getFirst().trade() == Trade.WINDOW)
                .findFirst()
                .orElseThrow();
        String line = open.next().getFirst().code();
        log.mark(fitter, MarkRequest.done(UUID.randomUUID(), id, open.opening().id(), line, clock.instant()));

        assertThat(why(sample.remove(me)))
                .contains("1 marks at its openings that are not of the sample's own people")
                .contains("works in crew window-1 of the sample");
        assertThat(folders.list()).hasSize(2);
        assertThat(states.states(id)).isNotEmpty();
        db.execute("delete from step_mark where person_id = " + fitter.id().value());
    }

    private void noOtherLogCanGo(FolderId id) {
        db.execute("update job_folder set sample = false where id = " + id.value());
        assertThatExceptionOfType(DataAccessException.class)
                .isThrownBy(() -> db.execute("delete from step_mark where folder_id = " + id.value()))
                .withStackTraceContaining("only grows");
        db.execute("update job_folder set sample = true where id = " + id.value());
    }

    private void itDoesNotComeBackByItself() {
        var newness = new DemoFolder.Newness(people, history);
        new DemoFolder("sample-data/harbour-week", folders, runs, week, newness, clock).load();

        assertThat(folders.list()).isEmpty();
    }

    private static String why(SampleResult result) {
        assertThat(result).isInstanceOf(SampleResult.Refused.class);
        return Saying.list(" ", ((SampleResult.Refused) result).why()).words();
    }

    /** Every row of every table, as text in an order of its own; what the platform does again and again is no one's row. */
    private Map<String, List<String>> rows() {
        Map<String, List<String>> all = new TreeMap<>();
        for (Table<?> table : tables())
            all.put(
                    table.getName(),
                    db.fetch("select t::text from " + table.getQualifiedName() + " t").stream()
                            .map(row -> String.valueOf(row.get(0)))
                            .filter(row -> !row.contains(",recurring,"))
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
