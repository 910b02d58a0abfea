package drylap.forecasts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.platform.BackgroundWork;
import drylap.security.TestPeople;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;

@DbTest
@Import(TestPeople.class)
class OldForecastsDbTests {
    @Autowired
    OldForecasts old;

    @Autowired
    BackgroundWork work;

    @Autowired
    Clock clock;

    @Autowired
    DSLContext db;

    private final String site = "OLD-" + UUID.randomUUID();

    private long kept(int daysAgo) {
        return db.fetchSingle("""
                        insert into kept_forecast (site, source, latitude, longitude, fetched_at, remarks, first_hour, rain_mm, rain_probability,
                            chance_since_s, wind_m_s, gust_m_s, wind_from_deg, temperature_c, relative_humidity)
                        values (?, 'csv', 50, 5, now() - make_interval(days => ?), '{}'::text[], now(), array[0.0], array[0.0], array[0], array[1.0],
                            array[1.0], array[1.0], array[10.0], array[50.0])
                        returning id""", site, daysAgo).get(0, Long.class);
    }

    private void siteOfAPlanBy(long forecast) {
        db.execute("""
                with f as (insert into job_folder (name, imported_at) values ('old', now()) returning id),
                    s as (insert into site (folder_id, site, row_no, name, latitude, longitude, time_zone, terrain)
                        select id, '%1$s', 0, 'Old', 50, 5, 'UTC', 'II' from f),
                    p as (insert into plan (folder_id, made_at, starts_at, horizon_end, hard, medium, soft)
                        select id, now(), now(), now(), 0, 0, 0 from f returning id)
                insert into plan_forecast (plan_id, site, kept_id, source, fetched_at) select id, '%1$s', %2$d, 'csv', now() from p""".formatted(site, forecast));
    }

    private List<Long> ids() {
        return db.fetch("select id from kept_forecast where site = ? order by id", site)
                .getValues(0, Long.class);
    }

    @Test
    void the_newest_of_a_site_and_what_a_plan_was_made_by_outlive_the_others() {
        long planned = kept(500);
        kept(450);
        long young = kept(399);
        long newest = kept(420);
        siteOfAPlanBy(planned);
        long fetch = db.fetchSingle("""
                insert into job (kind, payload, state, asked_at, ended_at)
                values ('forecast', 'old', 'done', now() - interval '500 days', now() - interval '500 days') returning id""").get(0, Long.class);

        old.run();

        assertThat(ids()).containsExactly(planned, young, newest);
        assertThat(db.fetch("select id from job where id = ?", fetch)).isEmpty();
    }

    @Test
    void the_database_lets_no_young_one_go_and_none_change() {
        long young = kept(20);
        long aged = kept(40);
        siteOfAPlanBy(kept(1));

        assertThatExceptionOfType(RuntimeException.class)
                .isThrownBy(() -> db.execute("delete from kept_forecast where id = ?", young))
                .withMessageContaining("is kept as it was fetched");
        assertThatExceptionOfType(RuntimeException.class)
                .isThrownBy(() -> db.execute("update kept_forecast set remarks = '{}' where id = ?", aged))
                .withMessageContaining("is kept as it was fetched");
        assertThat(db.execute("delete from kept_forecast where id = ?", aged)).isEqualTo(1);
    }

    @Test
    void a_setting_that_keeps_too_little_is_refused_with_what_is_accepted() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OldForecasts(db, work, clock, 7))
                .withMessageContaining("DRYLAP_KEEP_FORECASTS")
                .withMessageContaining("accepted: 30 to 36500 days");
    }
}
