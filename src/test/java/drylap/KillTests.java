package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** The whole application, killed with kill -9 in the middle of its work and started again on the same folder. */
class KillTests {
    private static final Duration PATIENCE = Duration.ofSeconds(180);

    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    Path home = Path.of("");

    @Test
    void a_killed_import_leaves_whole_folders_only_and_the_page_answers_again() throws Exception {
        try (ApplicationProcess first = ApplicationProcess.start(home, "import")) {
            first.awaitLine("imported 1"::equals);
            awaitOpenWrite(first);
            first.kill();
            assertThat(first.said()).as("killed in the middle").doesNotContain("failed");
        }
        try (ApplicationProcess second = ApplicationProcess.start(home)) {
            assertThat(second.page()).isEqualTo(ApplicationProcess.hasFrontEnd() ? 200 : 500);
            try (Connection database = second.database()) {
                long folders = number(database, "select count(*) from job_folder");
                assertThat(folders).isPositive();
                for (var table : rowsOf(KilledApplication.IMPORTED).entrySet())
                    assertThat(number(database, "select count(*) from " + table.getKey()))
                            .as(table.getKey())
                            .isEqualTo(folders * table.getValue());
            }
        }
    }

    @Test
    void a_killed_planning_run_goes_on_after_the_restart_and_no_database_is_left_behind() throws Exception {
        try (ApplicationProcess first = ApplicationProcess.start(home, "plan")) {
            first.awaitLine(line -> line.matches("run RUNNING [1-9]\\d*"));
            first.kill();
        }
        ApplicationProcess second = ApplicationProcess.start(home);
        try (second) {
            second.awaitReady();
            refuseASecondApplication();
            try (Connection database = second.database()) {
                awaitTrue(database, "select state = 'running' and attempt = 2 from job");
                assertThat(number(database, "select count(*) from visit")).isPositive();
                database.createStatement().execute("update job set stop_asked = true");
                awaitTrue(database, "select state = 'stopped' from job");
                assertThat(number(database, "select count(*) from plan")).isEqualTo(2);
            }
        }
        assertThat(second.databaseProcesses()).isEmpty();
    }

    private void refuseASecondApplication() throws IOException, InterruptedException {
        try (ApplicationProcess intruder = ApplicationProcess.start(home)) {
            assertThat(intruder.awaitEnd()).isNotZero();
            assertThat(intruder.said())
                    .contains("Another running application uses the database folder " + home.resolve("data"))
                    .contains("DRYLAP_DATA");
        }
    }

    /** Waits until some transaction of the application has written and not yet committed. */
    private static void awaitOpenWrite(ApplicationProcess application) throws Exception {
        try (Connection database = application.database()) {
            Awaitility.await()
                    .atMost(PATIENCE)
                    .pollInterval(Duration.ofMillis(5))
                    .until(() -> number(
                                    database,
                                    "select count(*) from pg_stat_activity where backend_xid is not null"
                                            + " and pid <> pg_backend_pid()")
                            > 0);
        }
    }

    private static void awaitTrue(Connection database, String question) {
        Awaitility.await().atMost(PATIENCE).until(() -> number(database, "select (" + question + ")::int") == 1);
    }

    private static long number(Connection database, String query) throws SQLException {
        try (var statement = database.createStatement();
                var answer = statement.executeQuery(query)) {
            answer.next();
            return answer.getLong(1);
        }
    }

    private static Map<String, Integer> rowsOf(JobFolder folder) {
        return Map.ofEntries(
                Map.entry("site", folder.sites().size()),
                Map.entry("facade", folder.facades().size()),
                Map.entry("opening", folder.openings().size()),
                Map.entry("crew", folder.crews().size()),
                Map.entry("shift", folder.shifts().size()),
                Map.entry("travel_leg", folder.travel().given().size()),
                Map.entry("forecast", folder.forecasts().size()),
                Map.entry(
                        "forecast_hour",
                        folder.forecasts().stream()
                                .mapToInt(f -> f.hours().size())
                                .sum()),
                Map.entry("labour_row", folder.labour().rows().size()),
                Map.entry(
                        "rule_value",
                        folder.rules().everywhere().own().size()
                                + folder.rules().ofSites().values().stream()
                                        .mapToInt(rules -> rules.own().size())
                                        .sum()),
                Map.entry("published_visit", folder.published().size()));
    }
}
