package drylap.ui.planner;

import com.vaadin.flow.component.html.NativeTable;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.WeekChoice;
import drylap.ui.drawn.Words;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/** The visits of a week sheet line by line, as spreadsheets have them. */
final class VisitTable {
    private VisitTable() {}

    /** Those that the choice lets through, crew by crew. */
    static NativeTable of(Speech say, FolderShown shown, WeekChoice choice) {
        NativeTable table = Panels.table(
                say.it("Crew"),
                say.it("Date"),
                say.it("From"),
                say.it("Until"),
                say.it("Time it takes"),
                say.it("Task"),
                say.it("Opening"),
                say.it("Site"),
                say.it("Wall"),
                say.it("Level"),
                say.it("Work"));
        visits(shown, choice).forEach(visit -> row(say, table, shown, visit));
        return table;
    }

    private static List<Visit> visits(FolderShown shown, WeekChoice choice) {
        return shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .filter(visit -> choice.shows(shown, visit))
                .sorted(Comparator.comparing(Visit::crew).thenComparing(Visit::start))
                .toList();
    }

    private static void row(Speech say, NativeTable table, FolderShown shown, Visit visit) {
        var site = shown.site(visit.facade().site());
        ZoneId zone = site.zone();
        long minutes = Duration.between(visit.start(), visit.end()).toMinutes();
        Panels.row(
                table,
                Panels.text(visit.crew().value()),
                Panels.day("", visit.date()),
                Panels.time("", LocalDateTime.ofInstant(visit.start(), zone)),
                Panels.time("", LocalDateTime.ofInstant(visit.end(), zone)),
                Panels.number("", minutes, "min"),
                Panels.text(say.it(Words.task(visit.task()))),
                Panels.text(visit.opening().value()),
                Panels.text(site.name()),
                Panels.text(visit.facade().facade()),
                Panels.number("", visit.level(), ""),
                Panels.text(say.it(Words.work(visit.task(), shown.opening(visit.opening())))));
    }
}
