package drylap.forecasts;

import static drylap.forecasts.ForecastSource.CSV;
import static drylap.forecasts.ForecastSource.MET_NORWAY;
import static drylap.forecasts.ForecastSource.OPEN_METEO;
import static drylap.forecasts.ForecastSource.US_WEATHER_SERVICE;
import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import drylap.DbTest;
import drylap.crews.TravelTimes;
import drylap.forecasts.ForecastChoiceResult.ChangedMeanwhile;
import drylap.forecasts.ForecastChoiceResult.Chosen;
import drylap.forecasts.fetching.LocalSource;
import drylap.forecasts.fetching.Sources;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.LabourTable;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.PlanForecast;
import drylap.planning.PlanForecasts;
import drylap.planning.PlanId;
import drylap.planning.Plans;
import drylap.platform.News;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import drylap.weather.ForecastOrigin;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jooq.DSLContext;
import org.jooq.ExecuteListener;
import org.jooq.impl.DSL;
import org.jooq.impl.DefaultExecuteListenerProvider;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

/** Sources are played on this machine; the time is set by the tests, noon of the golden answers at first. */
@DbTest
class ForecastsDbTests {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    DSLContext db;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    News news;

    @Autowired
    History history;

    @Autowired
    Sites sites;

    @Autowired
    FetchBook book;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    Plans plans;

    @Autowired
    PlanForecasts planned;

    @Autowired
    ForecastFetches fetches;

    @Autowired
    ForecastFiles files;

    @Autowired
    TestPeople people;

    private final LocalSource server;
    private final Site site = anotherSite();
    private Person scheduler =
            new Person(new drylap.kernel.PersonId(1), "p", "P", Role.SCHEDULER, Reach.EVERYWHERE, null, false);
    private FolderId folder = new FolderId(0);

    ForecastsDbTests() throws IOException {
        server = new LocalSource();
    }

    private static Site anotherSite() {
        Site quay = Payload.QUAY;
        return new Site(
                new SiteId("quay-" + NUMBER.incrementAndGet()), quay.name(), quay.place(), quay.zone(), quay.terrain());
    }

    @BeforeEach
    void store() {
        scheduler = people.scheduler();
        folder = folders.save("forecasts", job(site));
    }

    @AfterEach
    void close() {
        server.close();
    }

    /** The site alone, with a dry day imported, that of the golden answers until noon and two hours more. */
    private static JobFolder job(Site site) {
        return new JobFolder(
                List.of(site),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new TravelTimes(java.util.Map.of()),
                List.of(imported(site)),
                new LabourTable(List.of()),
                RuleBook.of(Rules.STANDARD),
                List.of());
    }

    private static Forecast imported(Site site) {
        return new Forecast(
                site.id(),
                IntStream.range(0, 14)
                        .mapToObj(hour -> new ForecastHour(
                                NOON.minus(Duration.ofHours(12 - hour)), 0, 0.01 * hour, 1, 2, 3, 4, 5))
                        .toList());
    }

    private ForecastChoices choices(Instant now) {
        return new ForecastChoices(db, transaction, at(now), news, history);
    }

    private KeptForecasts kept(Instant now) {
        return new KeptForecasts(db, choices(now), at(now));
    }

    private static Clock at(Instant now) {
        return Clock.fixed(now, ZoneOffset.UTC);
    }

    private void fetch(SiteId id, Instant now) {
        try (Sources sources = new Sources(server.settings(), at(now))) {
            new ForecastFetching(choices(now), sites, sources, book, kept(now), transaction, news, at(now)).fetch(id);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private ForecastChoice choose(Site at, @Nullable ForecastSource source) {
        ForecastChoice before = choices(NOON).of(scheduler, at.id());
        String cell = source == US_WEATHER_SERVICE ? "SEW/125,68" : null;
        var wanted = new ForecastChoice(at.id(), source, cell, 2, before.version(), "", null);
        return ((Chosen) choices(NOON).choose(scheduler, wanted)).choice();
    }

    private FetchState state(Site at) {
        return fetches.of(scheduler, at.id()).orElseThrow();
    }

    private Forecast used(Instant now) {
        return kept(now).over(List.of(site), List.of(imported(site))).getFirst();
    }

    @Test
    void a_fetched_forecast_is_kept_with_its_times_and_planned_by() {
        choose(site, US_WEATHER_SERVICE);
        server.answers(200, Payload.of(US_WEATHER_SERVICE).text());

        fetch(site.id(), NOON.plusSeconds(60));

        assertThat(kept(NOON).newest(scheduler, site.id(), 5)).singleElement().satisfies(one -> {
            assertThat(one.source()).isEqualTo(US_WEATHER_SERVICE);
            assertThat(one.fetchedAt()).isEqualTo(NOON.plusSeconds(60));
            assertThat(one.read().issuedAt()).isEqualTo("2026-11-25T11:40:54Z");
            assertThat(one.read().forecast().hours())
                    .isEqualTo(Payload.of(US_WEATHER_SERVICE).sound().forecast().hours());
        });
        assertThat(state(site))
                .returns(FetchOutcome.FETCHED, FetchState::outcome)
                .returns("72 hours", FetchState::words)
                .returns(NOON.plusSeconds(60).plus(Duration.ofHours(2)), FetchState::dueAt);
        assertThat(used(NOON).end()).isEqualTo("2026-11-28T12:00:00Z");
    }

    @Test
    void the_folder_as_it_stands_by_now_has_the_fetched_forecast() {
        choose(site, MET_NORWAY);
        ForecastHour always = new ForecastHour(NOON.plus(Duration.ofDays(9000)), 1, 0.5, 3, 5, 90, 7, 80);
        var far = new ReadForecast(new Forecast(site.id(), List.of(always)), NOON, List.of());
        keep(far);

        assertThat(current.load(folder).forecasts()).singleElement().satisfies(forecast -> {
            assertThat(forecast.hours()).containsExactly(always);
            assertThat(forecast.origin()).isNotNull();
        });
        assertThat(folders.load(folder).forecasts()).containsExactly(imported(site));
    }

    @Test
    void hours_before_the_first_come_from_former_forecasts_and_then_from_the_folder() {
        choose(site, MET_NORWAY);
        keep(told(NOON.plus(Duration.ofHours(-1)), 4, 0.5));
        keep(told(NOON, 6, 0.7));
        keep(told(NOON.plus(Duration.ofHours(2)), 6, 0.9));

        List<ForecastHour> hours = used(NOON).hours();

        assertThat(hours).hasSize(20);
        assertThat(hours.subList(0, 11)).isEqualTo(imported(site).hours().subList(0, 11));
        assertThat(hours.subList(11, 20))
                .extracting(ForecastHour::rainMm)
                .containsExactly(0.5, 0.7, 0.7, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9);
        assertThat(hours.subList(11, 20))
                .extracting(hour ->
                        Duration.between(hour.chanceFrom(), hour.start()).toHours())
                .as("no chance is shared between two forecasts")
                .containsExactly(0L, 0L, 0L, 0L, 1L, 2L, 3L, 4L, 5L);
    }

    private void keep(ReadForecast read) {
        transaction.executeWithoutResult(_ -> kept(NOON).keep(MET_NORWAY, site, read, NOON));
    }

    /** One chance for all of the hours, which began a day before them. */
    private ReadForecast told(Instant first, int count, double rainMm) {
        return new ReadForecast(
                new Forecast(
                        site.id(),
                        IntStream.range(0, count)
                                .mapToObj(h -> new ForecastHour(
                                        first.plus(Duration.ofHours(h)),
                                        rainMm,
                                        0.6,
                                        3,
                                        5,
                                        90,
                                        7,
                                        80,
                                        first.minus(Duration.ofDays(1))))
                                .toList()),
                NOON,
                List.of());
    }

    private LastingRain lasting(Instant now) {
        return new LastingRains(db, at(now)).of(scheduler, site);
    }

    /** 27 periods of six hours that do not overlap, from each of two forecasts; the newer one's count. */
    @Test
    void how_rain_lasts_is_solved_from_the_kept_forecasts_of_a_source_that_tells_both() {
        choose(site, MET_NORWAY);
        server.answers(200, BothTellings.of(site, NOON, 167, 0.3));
        fetch(site.id(), NOON);
        server.answers(200, BothTellings.of(site, NOON, 167, 0.72));
        fetch(site.id(), NOON.plus(Duration.ofHours(9)));

        assertThat(kept(NOON).newest(scheduler, site.id(), 1).getFirst().read().periods())
                .hasSize(162)
                .first()
                .returns(NOON, PeriodChance::from);
        assertThat(lasting(NOON.plus(Duration.ofHours(10))))
                .isInstanceOfSatisfying(LastingRain.Solved.class, solved -> {
                    assertThat(solved.tellings()).isEqualTo(27);
                    assertThat(solved.rho()).isCloseTo(0.72, org.assertj.core.api.Assertions.within(0.005));
                    assertThat(solved.leftOut()).isZero();
                });
        assertThat(lasting(NOON.plus(Duration.ofDays(40))))
                .as("rain of another season")
                .isInstanceOf(LastingRain.Unsolved.class);
    }

    @Test
    void a_site_whose_source_tells_each_hour_once_says_so() {
        String why =
                "no forecast of the last 30 days is kept that tells chances of single hours and of several together; "
                        + "MET Norway, Locationforecast does";
        assertThat(lasting(NOON).said().words()).isEqualTo(why);
        choose(site, OPEN_METEO);
        server.answers(200, Payload.of(OPEN_METEO).text());
        fetch(site.id(), NOON);

        assertThat(lasting(NOON).said().words()).isEqualTo(why);
        var elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("elsewhere"))), null);
        assertThatThrownBy(() -> new LastingRains(db, at(NOON)).of(elsewhere, site))
                .isInstanceOf(NotAllowed.class);
    }

    @Test
    void a_plan_says_by_which_forecast_of_each_site_it_was_made() {
        choose(site, MET_NORWAY);
        ForecastHour always = new ForecastHour(NOON.plus(Duration.ofDays(9000)), 1, 0.5, 3, 5, 90, 7, 80);
        keep(new ReadForecast(new Forecast(site.id(), List.of(always)), NOON.minusSeconds(3600), List.of()));
        Plan plan = new Plan(NOON, NOON, List.of(), List.of(), List.of(), List.of(), new Ledger(List.of(), 0, 0, 0));

        PlanId fetched = plans.save(folder, plan, current.load(folder));
        PlanId own = plans.save(folder, plan, folders.load(folder));
        PlanId none = plans.save(folder, plan, folders.load(folder).withForecasts(List.of()));

        assertThat(planned.of(scheduler, fetched)).singleElement().satisfies(one -> {
            assertThat(one.site()).isEqualTo(site.id());
            assertThat(one.origin())
                    .isEqualTo(new ForecastOrigin(
                            kept(NOON)
                                    .newest(scheduler, site.id(), 1)
                                    .getFirst()
                                    .id(),
                            "MET Norway, Locationforecast",
                            NOON.minusSeconds(3600),
                            NOON));
            assertThat(one.toldUntil()).isEqualTo(always.start().plusSeconds(3600));
        });
        assertThat(planned.of(scheduler, own))
                .containsExactly(
                        new PlanForecast(site.id(), null, imported(site).end()));
        assertThat(planned.of(scheduler, none)).containsExactly(new PlanForecast(site.id(), null, null));
        assertThat(planned.of(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("elsewhere"))), null), fetched))
                .isEmpty();
    }

    @Test
    void the_forecasts_of_many_sites_are_asked_for_at_once() {
        List<Site> many = List.of(site, anotherSite(), anotherSite());
        for (Site one : many) {
            choose(one, MET_NORWAY);
            for (int hour = 0; hour < 3; hour++) {
                var read = new ReadForecast(
                        new Forecast(one.id(), imported(one).hours().subList(hour, 14)), NOON, List.of());
                transaction.executeWithoutResult(_ -> kept(NOON).keep(MET_NORWAY, one, read, NOON));
            }
        }
        var asked = new AtomicInteger();
        DSLContext counted = DSL.using(db.configuration()
                .derive(new DefaultExecuteListenerProvider(ExecuteListener.onStart(_ -> asked.incrementAndGet()))));
        var counting = new KeptForecasts(
                counted, new ForecastChoices(counted, transaction, at(NOON), news, history), at(NOON));

        List<Forecast> used = counting.over(many, List.of());

        assertThat(used)
                .extracting(Forecast::site)
                .containsExactlyElementsOf(many.stream().map(Site::id).toList());
        assertThat(used).allSatisfy(one -> assertThat(one.hours()).hasSize(14));
        assertThat(asked)
                .as("one question for the choices, one for the forecasts")
                .hasValue(2);
    }

    @Test
    void a_kept_forecast_is_told_again_as_it_was_planned_by() {
        choose(site, MET_NORWAY);
        keep(told(NOON.plus(Duration.ofHours(-1)), 4, 0.5));
        Forecast then = used(NOON);
        keep(told(NOON, 6, 0.7));
        long first = kept(NOON).newest(scheduler, site.id(), 2).getLast().id();

        Forecast again = kept(NOON).told(scheduler, site, first).orElseThrow();

        assertThat(again.origin()).isEqualTo(then.origin());
        assertThat(again.hours()).isEqualTo(then.hours().subList(11, 15));
        assertThat(kept(NOON).told(scheduler, site, Long.MAX_VALUE)).isEmpty();
        assertThat(kept(NOON).told(scheduler, anotherSite(), first)).isEmpty();
    }

    @Test
    void an_answer_that_comes_again_is_not_kept_twice_and_only_newer_ones_are_asked_for() {
        choose(site, MET_NORWAY);
        server.answers(
                200,
                Payload.of(MET_NORWAY).text(),
                "Last-Modified",
                "Wed, 25 Nov 2026 11:04:26 GMT",
                "Expires",
                "Wed, 25 Nov 2026 15:34:00 GMT");
        fetch(site.id(), NOON);
        assertThat(state(site).dueAt()).isEqualTo("2026-11-25T15:34:00Z");
        fetch(site.id(), NOON.plusSeconds(100));
        assertThat(state(site)).returns(FetchOutcome.UNCHANGED, FetchState::outcome);
        server.answers(304, "");
        fetch(site.id(), NOON.plusSeconds(200));

        assertThat(server.asked().getLast().header("If-Modified-Since")).isEqualTo("Wed, 25 Nov 2026 11:04:26 GMT");
        assertThat(state(site)).returns(FetchOutcome.UNCHANGED, FetchState::outcome);
        assertThat(kept(NOON).newest(scheduler, site.id(), 5)).hasSize(1);
    }

    @Test
    void the_last_good_forecast_stays_whatever_comes_after_it() {
        choose(site, MET_NORWAY);
        server.answers(200, Payload.of(MET_NORWAY).text());
        fetch(site.id(), NOON);
        Forecast good = used(NOON);

        server.answers(
                200, Payload.of(MET_NORWAY).change("\"celsius\"", "\"mood\"").text());
        fetch(site.id(), NOON.plusSeconds(60));
        assertThat(state(site).outcome()).isEqualTo(FetchOutcome.REFUSED);
        assertThat(state(site).words()).startsWith("properties.meta.units: air_temperature is an unknown unit (mood)");
        assertThat(used(NOON)).isEqualTo(good);

        server.answers(404, "");
        fetch(site.id(), NOON.plusSeconds(120));
        assertThat(state(site).words()).isEqualTo("127.0.0.1 knows no forecast for this place (404)");
        assertThat(used(NOON)).isEqualTo(good);
    }

    @Test
    void a_source_that_asks_to_be_left_alone_is_left_alone_for_all_of_its_sites() {
        Site other = anotherSite();
        folders.save("other", job(other));
        choose(site, OPEN_METEO);
        choose(other, OPEN_METEO);
        server.answers(429, "", "Retry-After", "7200");
        fetch(site.id(), NOON);

        fetch(other.id(), NOON.plusSeconds(60));
        fetch(site.id(), NOON.plusSeconds(60));
        assertThat(server.asked()).hasSize(1);
        assertThat(state(other).notBefore()).isEqualTo(NOON.plusSeconds(7200));

        server.answers(200, Payload.of(OPEN_METEO).text());
        fetch(other.id(), NOON.plusSeconds(7200));
        assertThat(state(other))
                .returns(FetchOutcome.FETCHED, FetchState::outcome)
                .returns(null, FetchState::notBefore);
    }

    @Test
    void pauses_double_while_nobody_answers() {
        choose(site, OPEN_METEO);
        server.answers(404, "");
        for (int minutes : new int[] {5, 10, 20, 40, 80, 160, 320, 360, 360}) {
            fetch(site.id(), NOON);
            assertThat(Duration.between(NOON, state(site).dueAt())).isEqualTo(Duration.ofMinutes(minutes));
        }
    }

    @Test
    void without_a_source_or_at_another_place_the_folders_own_forecast_holds() {
        choose(site, MET_NORWAY);
        server.answers(200, Payload.of(MET_NORWAY).text());
        fetch(site.id(), NOON);
        Site moved =
                new Site(site.id(), site.name(), new drylap.kernel.GeoPoint(47.7, -122.3), site.zone(), site.terrain());
        assertThat(kept(NOON).over(List.of(moved), List.of(imported(site)))).containsExactly(imported(site));

        choose(site, null);
        assertThat(used(NOON)).isEqualTo(imported(site));
        assertThat(kept(NOON).over(List.of(site), List.of())).isEmpty();
    }

    @Test
    void a_forecast_that_is_over_gives_way_to_a_longer_one_of_the_folder() {
        choose(site, MET_NORWAY);
        var brief =
                new ReadForecast(new Forecast(site.id(), imported(site).hours().subList(0, 3)), NOON, List.of());
        keep(brief);

        assertThat(used(NOON)).isEqualTo(imported(site));
        assertThat(used(NOON.minus(Duration.ofHours(11))).hours()).hasSize(3);
    }

    @Test
    void only_who_may_choose_at_the_site_chooses() {
        var wanted = new ForecastChoice(site.id(), MET_NORWAY, null, 2, 0, "", null);
        Person crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "w1");
        Person elsewhere = people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("elsewhere"))), null);

        for (Person who : List.of(crew, elsewhere)) {
            assertThatExceptionOfType(NotAllowed.class)
                    .isThrownBy(() -> choices(NOON).choose(who, wanted));
            assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> fetches.now(who, site.id()));
            assertThatExceptionOfType(NotAllowed.class)
                    .isThrownBy(() -> choices(NOON).of(who, site.id()));
        }
    }

    @Test
    void two_people_who_choose_at_once_do_not_undo_each_other() {
        choose(site, MET_NORWAY);
        var stale = new ForecastChoice(site.id(), CSV, null, 2, 0, "", null);

        assertThat(choices(NOON).choose(scheduler, stale))
                .isInstanceOfSatisfying(
                        ChangedMeanwhile.class,
                        meanwhile -> assertThat(meanwhile.newer().source()).isEqualTo(MET_NORWAY));
    }

    @Test
    void what_cannot_be_chosen_is_said() {
        assertThat(refused(new ForecastChoice(site.id(), US_WEATHER_SERVICE, "here", 2, 0, "", null)))
                .isEqualTo("'here' is no grid cell; a blank, or one such as SEW/125,68 is accepted");
        assertThat(refused(new ForecastChoice(site.id(), MET_NORWAY, "SEW/125,68", 2, 0, "", null)))
                .isEqualTo("only the US National Weather Service has grid cells; leave it blank");
        assertThat(refused(new ForecastChoice(site.id(), MET_NORWAY, null, 0, 0, "", null)))
                .isEqualTo("every 0 hours; 1 to 24 are accepted");
    }

    private String refused(ForecastChoice wanted) {
        return ((ForecastChoiceResult.Refused) choices(NOON).choose(scheduler, wanted))
                .why()
                .words();
    }

    @Test
    void a_file_that_is_brought_in_is_planned_by_and_nobody_is_asked_for_the_next_one() {
        Forecast file = imported(site);
        var seen = choices(NOON).of(scheduler, site.id());

        var result = files.use(scheduler, site, new ReadForecast(file, null, List.of()), seen);

        assertThat(result)
                .isInstanceOfSatisfying(
                        Chosen.class,
                        chosen -> assertThat(chosen.choice().source()).isEqualTo(ForecastSource.UPLOAD));
        assertThat(used(NOON).hours()).isEqualTo(file.hours());
        assertThat(used(NOON).origin()).extracting(ForecastOrigin::source).isEqualTo("Forecast file brought in");
        assertThat(book.due(Instant.now(Clock.systemUTC()).plusSeconds(60), 1000))
                .doesNotContain(site.id());
        assertThat(fetches.of(scheduler, site.id())).isEmpty();
    }

    @Test
    void a_file_is_not_kept_where_somebody_else_chose_meanwhile_or_one_may_not() {
        var seen = choices(NOON).of(scheduler, site.id());
        choose(site, MET_NORWAY);
        var read = new ReadForecast(imported(site), null, List.of());
        Person crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "w1");

        assertThat(files.use(scheduler, site, read, seen)).isInstanceOf(ChangedMeanwhile.class);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> files.use(crew, site, read, seen));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> files.look(crew, site, new byte[0]));

        assertThat(kept(NOON).newest(scheduler, site.id(), 5)).isEmpty();
        assertThat(choices(NOON).of(scheduler, site.id()).source()).isEqualTo(MET_NORWAY);
    }

    @Test
    void a_kept_forecast_never_changes() {
        var read = new ReadForecast(imported(site), null, List.of("a", "b"));
        transaction.executeWithoutResult(_ -> kept(NOON).keep(CSV, site, read, NOON));

        assertThat(kept(NOON).newest(scheduler, site.id(), 1).getFirst().read()).isEqualTo(read);
        assertThatThrownBy(() -> db.deleteFrom(KEPT_FORECAST)
                        .where(KEPT_FORECAST.SITE.eq(site.id().value()))
                        .execute())
                .hasMessageContaining("is kept as it was fetched");
    }

    @Test
    void what_is_due_is_found_and_a_fetch_at_once_runs_in_the_background() {
        choose(site, CSV);
        assertThat(book.due(NOON, 1000)).contains(site.id());
        assertThat(book.due(NOON.minusSeconds(1), 1000)).doesNotContain(site.id());

        assertThat(fetches.now(scheduler, site.id())).isTrue();

        await().untilAsserted(() ->
                assertThat(state(site).words()).isEqualTo("no address is set for Forecast file of your own (CSV)"));
        assertThat(book.due(NOON, 1000)).doesNotContain(site.id());
    }
}
