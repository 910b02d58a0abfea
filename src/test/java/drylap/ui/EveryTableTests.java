package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.html.NativeTable;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.Panels;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Whoever puts a table on a screen gives it as a spreadsheet too, or stands here with the reason why not. */
class EveryTableTests {
    private static final Map<String, String> WITHOUT = Map.of(
            "drylap.ui.planner.Panels", "makes the tables of the others",
            "drylap.ui.planner.ForecastFileDialog",
                    "shows a person their own file before it is taken in, and what is wrong with it",
            "drylap.ui.planner.HoursTable", "makes the spreadsheet of a forecast strip",
            "drylap.ui.planner.ScheduleOpenings", "shows a person their own file before it is taken in",
            "drylap.ui.planner.VisitTable", "makes the spreadsheet of the week sheet",
            "drylap.ui.shell.SamplePeople", "stands on the sign-in page");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drylap.ui");

    @Test
    void every_table_is_to_be_had_as_a_spreadsheet() {
        Map<String, String> found = new TreeMap<>();
        CLASSES.stream().filter(type -> tables(type) > 0).forEach(type -> {
            if (links(type) == 0)
                found.put(
                        type.getFullName(), WITHOUT.getOrDefault(type.getFullName(), "no spreadsheet, and no reason"));
        });

        assertThat(found).containsExactlyInAnyOrderEntriesOf(WITHOUT);
    }

    /** Where there are two tables there are two spreadsheets; a table made only for the file is none of the screen. */
    @Test
    void no_class_has_more_tables_on_the_screen_than_spreadsheets() {
        assertThat(CLASSES.stream().filter(type -> links(type) > 0))
                .isNotEmpty()
                .allSatisfy(type -> assertThat(links(type))
                        .as(type.getFullName())
                        .isGreaterThanOrEqualTo(tables(type) - wholes(type)));
    }

    /** Scripts that draw a table, and which classes give it as a spreadsheet beside them. */
    private static final Map<String, List<String>> BY_SCRIPTS = Map.of(
            "forecast-strip.rows.ts", List.of("drylap.ui.planner.OpenHoursView", "drylap.ui.planner.WallsView"),
            "week-sheet.ts", List.of("drylap.ui.planner.WeekSheetView"),
            "crew-day-odds.ts", List.of("drylap.ui.planner.OddsTablePanel"));

    @Test
    void a_table_that_a_script_draws_is_to_be_had_as_a_spreadsheet_too() throws IOException {
        try (var files = Files.list(Path.of("frontend"))) {
            assertThat(files.filter(EveryTableTests::drawsATable)
                            .map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(BY_SCRIPTS.keySet());
        }
        assertThat(BY_SCRIPTS.values().stream().flatMap(List::stream))
                .allSatisfy(
                        name -> assertThat(links(CLASSES.get(name))).as(name).isPositive());
    }

    private static boolean drawsATable(Path file) {
        String name = file.getFileName().toString();
        try {
            return name.endsWith(".ts")
                    && !name.endsWith(".test.ts")
                    && Files.readString(file).contains("<table");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static long tables(JavaClass type) {
        long made = type.getMethodCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().isEquivalentTo(Panels.class)
                        && call.getName().equals("table"))
                .count();
        return made
                + type.getConstructorCallsFromSelf().stream()
                        .filter(call -> call.getTargetOwner().isAssignableTo(NativeTable.class)
                                || call.getTargetOwner().isAssignableTo(Grid.class))
                        .count();
    }

    private static long wholes(JavaClass type) {
        return type.getMethods().stream()
                .filter(method -> method.getName().equals("whole")
                        && method.getRawReturnType().isEquivalentTo(NativeTable.class))
                .count();
    }

    private static long links(JavaClass type) {
        return type.getConstructorCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().isEquivalentTo(SpreadsheetLink.class))
                .count();
    }
}
