package drylap.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.planning.JobFolders;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.StoredFolder;
import drylap.platform.DatabasePlace;
import drylap.platform.TestDatabase;
import drylap.progress.OpeningStates;
import drylap.security.DemoPassword;
import drylap.security.HistorySeals;
import drylap.security.People;
import drylap.security.SealCheck;
import drylap.security.SignIns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Databases of earlier times, each filled by the program of its time, are taken back and brought up to date: what was in them is compared
 * value by value, by PostgreSQL itself, and read by the program of today.
 */
class UpgradeDrillDbTests {
    private static final Path FOLDER = Path.of("src/test/resources/upgrades");
    /** Values that a migration changes on purpose: that of the table's column, by "table.column". */
    private static final Set<String> CHANGED_ON_PURPOSE = Set.of("job_folder.sample", "person.taken_away");

    @TempDir
    Path folder;

    static List<Path> databases() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".zip"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("databases")
    void what_was_kept_in_earlier_times_is_kept(Path backup) throws Exception {
        String url = TestDatabase.empty();
        Backups.restore(backup, new DatabasePlace(Path.of("none"), folder.resolve("files"), url, "postgres", ""));
        Map<String, List<String>> columns;
        Map<String, String> before;
        try (var connection = DriverManager.getConnection(url, "postgres", "")) {
            var db = DSL.using(connection, SQLDialect.POSTGRES);
            columns = new Catalog(connection).tables();
            before = contents(db, columns);
            // the background work of that time does not begin anew
            db.execute("delete from scheduled_tasks");
            columns.remove("scheduled_tasks");
            before.remove("scheduled_tasks");
        }
        assertThat(before).isNotEmpty();

        try (var program = started(url, folderOfPhotos())) {
            var db = program.getBean(DSLContext.class);
            assertThat(contents(db, columns)).isEqualTo(before);
            everyConstraintHolds(db);
            theProgramReads(program, db);
        }
    }

    /** Digests of what each table held then, in columns that it had then. */
    private static Map<String, String> contents(DSLContext db, Map<String, List<String>> columns) {
        Map<String, String> contents = new HashMap<>();
        columns.forEach((table, all) -> {
            var named = all.stream()
                    .filter(column -> !CHANGED_ON_PURPOSE.contains(table + "." + column))
                    .map("\"%s\""::formatted)
                    .toList();
            String rows = "select row(%s)::text as one from \"%s\"".formatted(String.join(", ", named), table);
            contents.put(
                    table,
                    db.fetchSingle(
                                    "select count(*) || ' ' || coalesce(md5(string_agg(one, E'\\n' order by one collate \"C\")), '') from (%s) all_of_it"
                                            .formatted(rows))
                            .get(0, String.class));
        });
        return contents;
    }

    /** Where the photos lie of a database that had them beside it; nothing where they are in it. */
    private String folderOfPhotos() {
        Path files = folder.resolve("files");
        return Files.exists(files) ? files.toString() : "";
    }

    /** The application brings a database up to date when it starts. */
    private static ConfigurableApplicationContext started(String url, String files) {
        return new SpringApplicationBuilder(DbTest.Application.class)
                .web(WebApplicationType.NONE)
                .properties(
                        "drylap.work.regular=false",
                        "drylap.db.url=" + url,
                        "drylap.db.user=postgres",
                        "spring.main.lazy-initialization=true",
                        "spring.datasource.hikari.minimum-idle=1",
                        "spring.datasource.hikari.maximum-pool-size=4")
                .run("--drylap.files=" + files);
    }

    /** Rows came with the guards off, so each is asked of again; a foreign key is one more question. */
    private static void everyConstraintHolds(DSLContext db) {
        var checks = db.fetch("""
                select conrelid::regclass::text, conname, pg_get_expr(conbin, conrelid) from pg_constraint
                where contype = 'c' and connamespace = 'public'::regnamespace and conrelid <> 0""");
        assertThat(checks).hasSizeGreaterThan(50);
        for (var check : checks)
            assertThat(db.fetchSingle("select count(*) from %s where not (%s)".formatted(check.get(0), check.get(2)))
                            .get(0, Long.class))
                    .as("rows against %s of %s", check.get(1), check.get(0))
                    .isZero();
        for (var key : db.fetch("""
                select conrelid::regclass::text, confrelid::regclass::text, conname,
                    (select string_agg(format('child.%I = parent.%I', c.attname, p.attname), ' and ')
                        from unnest(conkey, confkey) k(child, parent)
                        join pg_attribute c on c.attrelid = conrelid and c.attnum = k.child
                        join pg_attribute p on p.attrelid = confrelid and p.attnum = k.parent),
                    (select string_agg(format('child.%I is not null', c.attname), ' and ')
                        from unnest(conkey) k(child) join pg_attribute c on c.attrelid = conrelid and c.attnum = k.child)
                from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace"""))
            assertThat(db.fetchSingle(
                                    "select count(*) from %s child where %s and not exists (select from %s parent where %s)"
                                            .formatted(key.get(0), key.get(4), key.get(1), key.get(3)))
                            .get(0, Long.class))
                    .as("rows of %s without what %s names", key.get(0), key.get(2))
                    .isZero();
        assertThat(db.fetch("select conname from pg_constraint where not convalidated"))
                .isEmpty();
    }

    /** What the pages ask for: the folder, the plan that people work by, the state of each opening; and people come in. */
    private static void theProgramReads(ConfigurableApplicationContext program, DSLContext db) {
        var folders = program.getBean(JobFolders.class);
        for (StoredFolder stored : folders.list()) {
            var folder = folders.load(stored.id());
            assertThat(folder.openings())
                    .hasSize(
                            count(db, "opening where folder_id = " + stored.id().value()));
            assertThat(program.getBean(OpeningStates.class).states(stored.id())).hasSameSizeAs(folder.openings());
            assertThat(program.getBean(OpeningStates.class).states(stored.id()).stream()
                            .filter(state -> !state.done().isEmpty()))
                    .hasSizeGreaterThanOrEqualTo(count(db, "(select distinct opening from step_mark) marked"));
            program.getBean(Plans.class)
                    .latest(stored.id())
                    .ifPresent(plan -> assertThat(plan.visits())
                            .hasSize(count(db, "visit where plan_id = (select max(id) from plan)")));
            program.getBean(Publications.class).latest(stored.id()).ifPresent(publication -> {
                var visits =
                        program.getBean(Plans.class).load(publication.plan()).visits();
                assertThat(visits)
                        .isNotEmpty()
                        .hasSize(count(
                                db,
                                "visit where plan_id = " + publication.plan().value()));
            });
        }
        assertThat(folders.list()).isNotEmpty();
        for (var person : program.getBean(People.class).demo().stream().limit(2).toList())
            assertThat(program.getBean(SignIns.class)
                            .enter(person.signInName(), DemoPassword.of(person.signInName()), "here"))
                    .isInstanceOf(SignIns.Outcome.In.class);
        program.getBean(HistorySeals.class).run();
        assertThat(SealCheck.of(db, Optional.empty()).faults()).isEmpty();
    }

    private static int count(DSLContext db, String from) {
        return db.fetchSingle("select count(*) from " + from).get(0, Integer.class);
    }

    @Test
    void there_is_a_database_of_each_time() throws IOException {
        assertThat(databases()).hasSizeGreaterThanOrEqualTo(6);
    }

    /** A migration that some database has had never changes: Flyway would refuse to start on it. The checksums are those of that time. */
    @Test
    void a_migration_that_was_released_stays_as_it_is() throws IOException {
        Map<String, String> now = new HashMap<>();
        for (var migration : Flyway.configure()
                .dataSource(TestDatabase.empty(), "postgres", "")
                .load()
                .info()
                .all()) now.put(migration.getVersion().getVersion(), String.valueOf(migration.getChecksum()));
        var released = Files.readAllLines(FOLDER.resolve("migrations.csv"));
        assertThat(released).hasSizeGreaterThan(30);
        for (String line : released.subList(1, released.size())) {
            String[] parts = line.split(",");
            assertThat(now).containsEntry(parts[0], parts[1]);
        }
    }
}
