import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.flywaydb.core.Flyway;
import org.jooq.codegen.GenerationTool;
import org.jooq.meta.jaxb.Configuration;
import org.jooq.meta.jaxb.Database;
import org.jooq.meta.jaxb.ForcedType;
import org.jooq.meta.jaxb.Generate;
import org.jooq.meta.jaxb.Generator;
import org.jooq.meta.jaxb.Jdbc;
import org.jooq.meta.jaxb.Target;

/**
 * Build step: starts a throw-away PostgreSQL, migrates it with Flyway and generates the jOOQ classes from it, so that the
 * code can name no table that the migrations do not make. Skipped while the migrations and this file are unchanged.
 */
public final class JooqCodegen {
    private static final String PACKAGE = "drylap.persistence.jooq";

    /** @param args the project's folder, and the folder for the generated sources */
    public static void main(String[] args) throws Exception {
        Path base = Path.of(args[0]);
        Path target = Path.of(args[1]);
        Path migrations = base.resolve("db/migration");
        Path stamp = target.resolveSibling("jooq.stamp");
        String state = stateOf(migrations, base.resolve("src/build/JooqCodegen.java"));
        if (Files.isDirectory(target)
                && Files.exists(stamp)
                && Files.readString(stamp).equals(state)) return;
        generate(migrations, target);
        Files.writeString(stamp, state);
    }

    private static void generate(Path migrations, Path target) throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.builder()
                .setLocaleConfig("locale", "C.UTF-8")
                .setServerConfig("unix_socket_directories", "")
                .start()) {
            Flyway.configure()
                    .dataSource(postgres.getPostgresDatabase())
                    .locations("filesystem:" + migrations)
                    .load()
                    .migrate();
            GenerationTool.generate(new Configuration()
                    .withJdbc(new Jdbc()
                            .withUrl(postgres.getJdbcUrl("postgres", "postgres"))
                            .withUser("postgres"))
                    .withGenerator(new Generator()
                            .withDatabase(tables())
                            .withGenerate(records())
                            .withTarget(new Target().withPackageName(PACKAGE).withDirectory(target.toString()))));
        }
    }

    /** Flyway's own table, and the column that only a trigger reads, stay out. */
    private static Database tables() {
        return new Database()
                .withName("org.jooq.meta.postgres.PostgresDatabase")
                .withInputSchema("public")
                .withOutputSchemaToDefault(true)
                .withIncludeRoutines(false)
                .withIncludeExcludeColumns(true)
                .withExcludes("flyway_schema_history|public\\.plan\\.made_in")
                .withForcedTypes(new ForcedType()
                        .withName("INSTANT")
                        .withIncludeTypes("(?i:timestamp.*with time zone|timestamptz.*)"));
    }

    private static Generate records() {
        return new Generate()
                .withPojos(false)
                .withRecords(true)
                .withJavaTimeTypes(true)
                .withGeneratedAnnotation(false)
                .withNonnullAnnotation(false);
    }

    private static String stateOf(Path migrations, Path generator) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        digest.update(Files.readAllBytes(generator));
        try (var files = Files.walk(migrations)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                digest.update(migrations.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
                digest.update(Files.readAllBytes(file));
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
