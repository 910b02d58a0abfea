package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** The jar that people start, after it has been packaged: it has other libraries on its way than tests have. */
class PackagedJarIT {
    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    Path home = Path.of("");

    @Test
    void it_makes_its_database_and_shows_its_door() throws Exception {
        try (ApplicationProcess application =
                ApplicationProcess.startJar(home, Path.of(System.getProperty("drylap.jar")))) {
            assertThat(application.page()).isEqualTo(200);
            try (Connection database = application.database();
                    ResultSet made = database.createStatement()
                            .executeQuery("select count(*) from flyway_schema_history where success and type = 'SQL'");
                    Stream<Path> migrations = Files.list(Path.of("db/migration"))) {
                made.next();
                assertThat(made.getLong(1)).isEqualTo(migrations.count());
            }
        }
    }
}
