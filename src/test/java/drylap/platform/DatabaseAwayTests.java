package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes as in appendix A, PostgreSQL Error Codes, of PostgreSQL's manual. */
class DatabaseAwayTests {
    @ParameterizedTest
    @CsvSource({
        "08006, true, connection_failure",
        "57P01, true, admin_shutdown",
        "57P02, true, crash_shutdown",
        "57P03, true, cannot_connect_now",
        "53100, true, disk_full",
        "53300, true, too_many_connections",
        "58030, true, io_error",
        "57014, false, query_canceled",
        "23505, false, unique_violation",
        "40001, false, serialization_failure",
        "42P01, false, undefined_table"
    })
    void what_is_the_databases_fault_is_told_from_what_is_the_works(String state, boolean away, String name) {
        var failure = new IllegalStateException(new RuntimeException(new SQLException(name, state)));
        assertThat(DatabaseAway.causes(failure)).as(name).isEqualTo(away);
    }

    @Test
    void a_pool_that_has_no_connection_is_a_database_that_is_away() {
        assertThat(DatabaseAway.causes(new SQLTransientConnectionException("timed out")))
                .isTrue();
        assertThat(DatabaseAway.causes(new IllegalStateException("no labour row")))
                .isFalse();
    }
}
