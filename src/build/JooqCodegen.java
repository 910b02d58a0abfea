import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.*;
import org.flywaydb.core.Flyway;
import org.jooq.codegen.GenerationTool;
import org.jooq.meta.jaxb.*;

/** Build step: start a throw-away PostgreSQL, migrate it with Flyway, generate the jOOQ classes from it. */
public final class JooqCodegen {
    public static void main(String[] args) throws Exception {
        Path base = Path.of(args[0]);
        Path target = Path.of(args[1]);
        Path migrations = base.resolve("db/migration");
        Path stamp = target.resolve("../../jooq.stamp").normalize();
        String key = stampOf(migrations);
        if (Files.exists(stamp)
                && Files.isDirectory(target)
                && Files.readString(stamp).equals(key)) {
            System.out.println("jOOQ sources are up to date");
            return;
        }
        try (EmbeddedPostgres pg = EmbeddedPostgres.builder()
                .setLocaleConfig("locale", "C.UTF-8")
                .setServerConfig("unix_socket_directories", "")
                .start()) {
            Flyway.configure()
                    .dataSource(pg.getPostgresDatabase())
                    .locations("filesystem:" + migrations)
                    .load()
                    .migrate();
            GenerationTool.generate(new Configuration()
                    .withJdbc(new Jdbc()
                            .withUrl(pg.getJdbcUrl("postgres", "postgres"))
                            .withUser("postgres"))
                    .withGenerator(new Generator()
                            .withDatabase(new Database()
                                    .withName("org.jooq.meta.postgres.PostgresDatabase")
                                    .withInputSchema("public")
                                    .withOutputSchemaToDefault(true)
                                    .withIncludeRoutines(true)
                                    .withExcludes("flyway_schema_history|gbt_.*|gbtreekey.*|.*_dist|scheduled_tasks"))
                            .withGenerate(new Generate()
                                    .withPojos(false)
                                    .withRecords(true)
                                    .withJavaTimeTypes(true)
                                    .withGeneratedAnnotation(false)
                                    .withNonnullAnnotation(false))
                            .withTarget(new Target()
                                    .withPackageName("drylap.persistence.jooq")
                                    .withDirectory(target.toString()))));
        }
        Files.writeString(stamp, key);
    }

    static String stampOf(Path dir) throws Exception {
        var digest = java.security.MessageDigest.getInstance("SHA-256");
        try (var files = Files.walk(dir)) {
            for (Path p : files.filter(Files::isRegularFile).sorted().toList()) {
                digest.update(dir.relativize(p).toString().getBytes());
                digest.update(Files.readAllBytes(p));
            }
        }
        return java.util.HexFormat.of().formatHex(digest.digest());
    }
}
