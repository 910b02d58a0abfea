package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.PLAN;
import static drylap.persistence.jooq.Tables.PLAN_FORECAST;
import static drylap.persistence.jooq.Tables.VISIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.kernel.FolderId;
import java.util.List;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;

@DbTest
class PlansDbTests {
    @Autowired
    JobFolders folders;

    @Autowired
    Plans plans;

    @Autowired
    DSLContext db;

    JobFolder folder = JobFolderFixture.of(3);
    FolderId id = new FolderId(0);

    @BeforeEach
    void store_a_folder() {
        id = folders.save("week", folder);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_plan_comes_back_as_it_was_saved(long seed) {
        Plan plan = PlanFixture.of(folder, seed);

        plans.save(id, plan);

        assertThat(plans.latest(id)).contains(plan);
    }

    @Test
    void a_folder_begins_without_a_plan_and_then_the_newest_counts() {
        assertThat(plans.latest(id)).isEmpty();

        plans.save(id, PlanFixture.of(folder, 1));
        plans.save(id, PlanFixture.of(folder, 2));

        assertThat(plans.latest(id)).contains(PlanFixture.of(folder, 2));
    }

    @Test
    void a_plan_that_breaks_a_rule_is_no_plan() {
        Plan plan = PlanFixture.of(folder, 1);
        Ledger broken = new Ledger(plan.ledger().lines(), 1, 0, 0);

        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> plans.save(
                        id,
                        new Plan(
                                plan.start(),
                                plan.horizonEnd(),
                                plan.visits(),
                                plan.unplanned(),
                                plan.coverNow(),
                                plan.openHours(),
                                broken)));
        assertThat(plans.latest(id)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update plan set soft = soft + 1 where id = %d",
                "update visit set crew = 'other' where plan_id = %d",
                "update unplanned_task set detail = '' where plan_id = %d",
                "update cover_now set minutes_to_close = 1 where plan_id = %d",
                "update open_window set row_no = row_no + 100 where plan_id = %d",
                "update ledger_line set amount = 0, cost = 0 where plan_id = %d",
                "delete from visit where plan_id = %d",
                "delete from unplanned_task where plan_id = %d",
                "delete from cover_now where plan_id = %d",
                "delete from open_window where plan_id = %d",
                "delete from ledger_line where plan_id = %d",
                "update plan_forecast set told_until = null where plan_id = %d",
                "delete from plan_forecast where plan_id = %d",
                "insert into plan_forecast select plan_id, site || '+' from plan_forecast where plan_id = %d",
                "insert into cover_now select plan_id, 99, 'one more', null, now(), 1 from plan p join cover_now c"
                        + " on c.plan_id = p.id where p.id = %d limit 1",
                "insert into visit select plan_id, row_no + 999, crew, date, sequence + 999, site, facade, level,"
                        + " opening || '+', task, starts_at, ends_at from visit where plan_id = %d",
            })
    void a_stored_plan_refuses_every_change(String change) {
        PlanId plan = plans.save(id, PlanFixture.of(folder, 4), folder);

        assertThatThrownBy(() -> db.execute(change.formatted(plan.value())))
                .isInstanceOf(DataIntegrityViolationException.class)
                .hasMessageContaining("plan")
                .hasMessageContaining("immutable");

        assertThat(plans.latest(id)).contains(PlanFixture.of(folder, 4));
    }

    @Test
    void a_plan_goes_whole_with_its_folder() {
        long plan = plans.save(id, PlanFixture.of(folder, 4), folder).value();

        db.deleteFrom(JOB_FOLDER).where(JOB_FOLDER.ID.eq(id.value())).execute();

        assertThat(List.of(
                        db.fetchCount(PLAN, PLAN.ID.eq(plan)),
                        db.fetchCount(VISIT, VISIT.PLAN_ID.eq(plan)),
                        db.fetchCount(PLAN_FORECAST, PLAN_FORECAST.PLAN_ID.eq(plan))))
                .containsOnly(0);
    }
}
