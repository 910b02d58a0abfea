package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import drylap.persistence.jooq.Tables;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;

/**
 * A table is written by one module only; everybody may read. Seen as writing: making a record of the table, and a table's
 * name on the line of a call that begins an insert, update or delete.
 */
class TableOwnershipTests {
    private static final Map<String, Set<String>> OWNERS = Map.ofEntries(
            Map.entry("forecasts", Set.of("FORECAST_CHOICE", "FORECAST_FETCH", "KEPT_FORECAST")),
            Map.entry("calendars", Set.of("CALENDAR", "CALENDAR_ENTRY", "CALENDAR_LINK")),
            Map.entry("climate", Set.of("KEPT_NORMALS")),
            Map.entry("tokens", Set.of("API_TOKEN")),
            Map.entry("resends", Set.of("KEPT_ANSWER")),
            Map.entry("hooks", Set.of("HOOK", "HOOK_DELIVERY")),
            Map.entry(
                    "sites", Set.of("SITE", "FACADE", "OPENING", "WINDOW_SCHEDULE", "OPENING_CHANGE", "OPENING_NOTE")),
            Map.entry("crews", Set.of("CREW", "SHIFT", "TRAVEL_LEG", "ABSENCE")),
            Map.entry("weather", Set.of("FORECAST", "FORECAST_HOUR")),
            Map.entry("platform", Set.of("JOB", "SCHEDULED_TASKS", "STORED_FILE", "FILE_FOLDER")),
            Map.entry(
                    "security",
                    Set.of(
                            "PERSON",
                            "PERSON_SITE",
                            "PERSON_TAKEN_AWAY",
                            "CHANGE_LOG",
                            "HISTORY_SEAL",
                            "HISTORY_WORDS_GONE",
                            "SIGN_IN_FAILURE")),
            Map.entry("progress", Set.of("STEP_MARK", "PHOTO", "SITE_PHOTO_PLACE")),
            Map.entry("roughopening", Set.of("ROUGH_MEASUREMENT", "ROUGH_SIZE")),
            Map.entry("risk", Set.of("ODDS_RUN")),
            Map.entry(
                    "handoff",
                    Set.of("SITE_HOLD_POINT", "HANDOFF_ACT", "HANDOFF_ENTRY", "HANDOFF_PHOTO", "CREW_DAY_BOOKING")),
            Map.entry(
                    "planning",
                    Set.of(
                            "JOB_FOLDER",
                            "LABOUR_ROW",
                            "LABOUR_ANSWER",
                            "RULE_VALUE",
                            "RULE_CHANGE",
                            "PUBLISHED_VISIT",
                            "PLAN",
                            "PLAN_FORECAST",
                            "VISIT",
                            "UNPLANNED_TASK",
                            "COVER_NOW",
                            "OPEN_WINDOW",
                            "LEDGER_LINE",
                            "PLANNING_RUN",
                            "RUN_POINT",
                            "RUN_WAYPOINT",
                            "PUBLICATION",
                            "PIN")));

    private static final Set<String> WRITES =
            Set.of("insertInto", "update", "deleteFrom", "delete", "mergeInto", "truncate", "truncateTable");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drylap");

    private record Write(String module, String table, String where) {}

    @Test
    void a_table_is_written_by_its_owner_only() {
        assertThat(writes())
                .allSatisfy(write -> assertThat(OWNERS.getOrDefault(write.module(), Set.of()))
                        .as("tables of %s, at %s", write.module(), write.where())
                        .contains(write.table()));
    }

    @Test
    void every_table_has_an_owner_that_writes_it() {
        Set<String> tables =
                Arrays.stream(Tables.class.getFields()).map(Field::getName).collect(Collectors.toSet());

        assertThat(OWNERS.values().stream().flatMap(Set::stream)).containsExactlyInAnyOrderElementsOf(tables);
        assertThat(writes().stream().map(Write::table).collect(Collectors.toSet()))
                .isEqualTo(tables);
    }

    @Test
    void a_write_names_its_table_on_its_own_line() {
        assertThat(ours().flatMap(this::beginnings)
                        .filter(call -> tablesOn(call).isEmpty()))
                .as("writes whose table cannot be seen here")
                .isEmpty();
    }

    private List<Write> writes() {
        return ours().flatMap(type -> Stream.concat(statements(type), records(type)))
                .toList();
    }

    private static Stream<JavaClass> ours() {
        return CLASSES.stream().filter(type -> !type.getPackageName().startsWith("drylap.persistence"));
    }

    private Stream<Write> statements(JavaClass type) {
        return beginnings(type).flatMap(call -> tablesOn(call).stream().map(table -> write(call, table)));
    }

    private Stream<JavaAccess<?>> beginnings(JavaClass type) {
        return type.getMethodCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().isAssignableTo(DSLContext.class))
                .filter(call -> WRITES.contains(call.getName()))
                .map(call -> call);
    }

    private static Set<String> tablesOn(JavaAccess<?> call) {
        return call.getOriginOwner().getFieldAccessesFromSelf().stream()
                .filter(access -> access.getTargetOwner().isEquivalentTo(Tables.class))
                .filter(access -> access.getLineNumber() == call.getLineNumber())
                .map(JavaAccess::getName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<Write> records(JavaClass type) {
        return type.getConstructorCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().getPackageName().endsWith(".jooq.tables.records"))
                .map(call -> write(call, tableOf(call.getTargetOwner())));
    }

    /** {@code ForecastHourRecord} belongs to {@code FORECAST_HOUR}. */
    private static String tableOf(JavaClass type) {
        return type.getSimpleName()
                .replaceFirst("Record$", "")
                .replaceAll("(?<=[a-z])(?=[A-Z])", "_")
                .toUpperCase(Locale.ROOT);
    }

    private static Write write(JavaAccess<?> call, String table) {
        return new Write(call.getOriginOwner().getPackageName().split("\\.")[1], table, call.getDescription());
    }
}
