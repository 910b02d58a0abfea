package drylap.planning;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.kernel.FolderId;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;

/** The tables keep their rules by themselves, whoever writes to them. */
@DbTest
class ConstraintsDbTests {
    @Autowired
    JobFolders folders;

    @Autowired
    DSLContext db;

    FolderId id = new FolderId(0);

    @BeforeEach
    void store_a_folder() {
        id = folders.save("week", JobFolderFixture.of(6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    site_terrain              | update site set terrain = 'V' where folder_id = %d
                    site_latitude_check       | update site set latitude = 90.1 where folder_id = %d
                    facade_azimuth_deg_check  | update facade set azimuth_deg = -1 where folder_id = %d
                    facade_folder_id_site     | insert into facade select folder_id, 'nowhere', facade, 999, azimuth_deg, handover_due from facade where row_no = 0 and folder_id = %d
                    opening_method            | update opening set method = 'C' where folder_id = %d
                    opening_width_mm_check    | update opening set width_mm = 0 where folder_id = %d
                    opening_folder_id_site    | update opening set facade = 'nowhere' where folder_id = %d
                    opening_folder_id_row_no  | update opening set row_no = 0 where folder_id = %d
                    opening_pkey              | update opening set opening = 'same' where folder_id = %d
                    crew_methods              | update crew set methods = '{A,Z}' where folder_id = %d
                    crew_trade                | update crew set trade = 'roofing' where folder_id = %d
                    shift_pkey                | update shift set date = '2026-04-13' where folder_id = %d
                    shift_check               | update shift set end_time = start_time where folder_id = %d
                    shift_check               | update shift set break_end = null where break_start is not null and folder_id = %d
                    travel_leg_minutes_check  | update travel_leg set minutes = -1 where folder_id = %d
                    rain_probability_check    | update forecast_hour set rain_probability = 1.01 where folder_id = %d
                    rain_mm_check             | update forecast_hour set rain_mm = -0.1 where folder_id = %d
                    labour_row_fixed_min      | update labour_row set fixed_min = -1 where folder_id = %d
                    labour_row_folder_id_task | update labour_row set task = 'wrap', method = null where folder_id = %d
                    rule_value_rule           | update rule_value set rule = 'luck' where folder_id = %d
                    published_visit_task      | update published_visit set task = 'paint' where folder_id = %d
                    published_visit_folder_id | update published_visit set crew = 'nobody' where folder_id = %d
                    published_visit_check     | update published_visit set ends_at = starts_at where folder_id = %d
                    """)
    void a_row_that_breaks_a_rule_is_refused_by_the_rules_name(String rule, String change) {
        assertThatThrownBy(() -> db.execute(change.formatted(id.value())))
                .isInstanceOf(DataIntegrityViolationException.class)
                .hasMessageContaining(rule);
    }
}
