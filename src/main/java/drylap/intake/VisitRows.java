package drylap.intake;

import drylap.crews.Crew;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.List;

/** The rows of {@code published.csv}, and of a plan's {@code visits.csv}. */
final class VisitRows {
    private record Key(OpeningId opening, Task task) {}

    private VisitRows() {}

    /** Reads visits for an audit: every reference must resolve, but it is the audit that judges the plan. */
    static List<PublishedVisit> readForAudit(Table table, Known known) {
        List<PublishedVisit> visits = new ArrayList<>();
        table.each(row -> {
            PublishedVisit visit = visit(row, known);
            if (row.sound()) visits.add(visit);
        });
        return visits;
    }

    /** Reads visits to plan from: beyond the references, each must be a visit that a plan of this folder could hold. */
    static List<PublishedVisit> read(Table table, Known known) {
        List<PublishedVisit> visits = new ArrayList<>();
        Ids<Key> keys = new Ids<>(Ids.Kind.VISIT, table.header());
        table.each(row -> {
            PublishedVisit visit = visit(row, known);
            if (row.sound()) check(row, visit.visit(), known);
            if (row.sound() && visit.pinned()) checkPin(row, visit.visit(), known);
            if (row.sound())
                keys.claim(
                        row,
                        "opening",
                        new Key(visit.visit().opening(), visit.visit().task()));
            if (row.sound()) visits.add(visit);
        });
        return visits;
    }

    private static PublishedVisit visit(Row row, Known known) {
        CrewId crew = new CrewId(row.text("crew"));
        known.crews.require(row, "crew", crew);
        OpeningId opening = new OpeningId(row.text("opening"));
        known.openings.require(row, "opening", opening);
        Visit visit = new Visit(
                crew,
                row.date("date"),
                row.whole("sequence", "", 1, 10_000),
                FacadeRows.reference(row, known),
                row.whole("level", "", 1, OpeningRows.HIGHEST_LEVEL),
                opening,
                row.coded("task", Task.class),
                row.instant("start"),
                row.instant("end"));
        if (row.sound()) checkPlace(row, visit, known);
        return new PublishedVisit(visit, row.yes("pinned"));
    }

    private static void checkPlace(Row row, Visit visit, Known known) {
        Opening opening = known.openingById.get(visit.opening());
        if (opening == null) return;
        if (!opening.facade().equals(visit.facade()))
            row.wrong("facade", FolderWords.NOT_WHERE.with(opening.id()), FolderWords.FACADE_IS.with(opening.facade()));
        else if (opening.level() != visit.level())
            row.wrong("level", FolderWords.NOT_WHERE.with(opening.id()), FolderWords.LEVEL_IS.with(opening.level()));
    }

    private static void check(Row row, Visit visit, Known known) {
        Opening opening = known.openingById.get(visit.opening());
        Crew crew = known.crewById.get(visit.crew());
        if (opening == null || crew == null) return;
        if (!opening.designedTasks().contains(visit.task()))
            row.wrong("task", FolderWords.NOT_NEEDED.with(opening.id()), FolderWords.ONE_OF.with(codes(opening)));
        else if (crew.trade() != visit.task().trade())
            row.wrong(
                    "task",
                    FolderWords.OTHER_TRADE.with(crew.id()),
                    Task.of(crew.trade()).code());
        else if (!visit.end().isAfter(visit.start()))
            row.wrong("end", FolderWords.NOT_AFTER_START.with(), FolderWords.AFTER.with(row.raw("start")));
        else if (!visit.start().atZone(crew.zone()).toLocalDate().equals(visit.date()))
            row.wrong("date", FolderWords.OTHER_DATE.with(), FolderWords.DATE_OF.with(row.raw("start")));
    }

    /** A pinned visit stays as it is, so it must be one that the crew can keep. */
    private static void checkPin(Row row, Visit visit, Known known) {
        if (!known.onShift(visit)) row.wrong("pinned", FolderWords.OUTSIDE.with(visit.crew()), FolderWords.PIN.with());
    }

    private static String codes(Opening opening) {
        return opening.designedTasks().stream().map(Task::code).collect(java.util.stream.Collectors.joining(", "));
    }

    static Lines write(List<PublishedVisit> visits, Zones zones) {
        Lines lines = new Lines(ContractFiles.PUBLISHED);
        for (PublishedVisit each : visits) {
            Visit visit = each.visit();
            FacadeId facade = visit.facade();
            lines.add(
                    visit.crew(),
                    visit.date(),
                    visit.sequence(),
                    facade.site(),
                    facade.facade(),
                    visit.level(),
                    visit.opening(),
                    visit.task().code(),
                    Lines.time(visit.start(), zones.of(facade.site())),
                    Lines.time(visit.end(), zones.of(facade.site())),
                    Lines.yes(each.pinned()));
        }
        return lines;
    }
}
