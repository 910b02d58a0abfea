package drylap.ui.drawn;

import drylap.sites.Opening;
import drylap.sites.OpeningNote;
import drylap.speech.Part;
import drylap.speech.Speech;
import drylap.windowschedule.CellFault;
import drylap.windowschedule.Header;
import drylap.windowschedule.OpeningOutcome;
import drylap.windowschedule.OpeningOutcome.Difference;
import drylap.windowschedule.OpeningOutcome.Kind;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.RowOutcome;
import drylap.windowschedule.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a window schedule becomes, in the words of its page. */
public final class ScheduleWords {
    private ScheduleWords() {}

    /** One opening of the preview. */
    public record Line(
            int row, String opening, Kind kind, String place, String size, String made, String differences) {}

    public static String kind(Kind kind) {
        return switch (kind) {
            case NEW -> "new";
            case CHANGED -> "changed";
            case SAME -> "same";
            case HELD -> "begun, stays as it is";
        };
    }

    public static List<Line> lines(Outcome outcome) {
        return outcome.rows().stream()
                .flatMap(row -> row.openings().stream().map(one -> line(row, one)))
                .toList();
    }

    private static Line line(RowOutcome row, OpeningOutcome one) {
        Opening becomes = one.becomes();
        return new Line(
                row.number(),
                one.id().value(),
                one.kind(),
                place(becomes),
                "%d × %d mm".formatted(becomes.widthMm(), becomes.heightMm()),
                "%s, method %s, %s, second layer %s, from %s"
                        .formatted(
                                becomes.frame().code(),
                                becomes.method().code(),
                                becomes.approach().code(),
                                becomes.secondLayer().code(),
                                becomes.deliveredOn()),
                one.differences().stream().map(ScheduleWords::difference).collect(Collectors.joining("; ")));
    }

    public static String place(Opening opening) {
        return "%s, level %d".formatted(opening.facade().facade(), opening.level());
    }

    private static String difference(Difference one) {
        return one.held()
                ? "%s stays %s, the schedule says %s".formatted(one.what(), one.was(), one.said())
                : "%s %s instead of %s".formatted(one.what(), one.said(), one.was());
    }

    /** What the schedule says of an opening beyond its design. */
    public static String note(Speech say, OpeningNote note) {
        List<String> said = new ArrayList<>(List.of(say.it("mark {0}", note.mark())));
        if (note.sillHeightMm() != null)
            said.add(say.it("sill {0} above the floor", new Part.Length(note.sillHeightMm())));
        if (note.xMm() != null) said.add(say.it("{0} along the wall", new Part.Length(note.xMm())));
        if (!note.headDetail().isBlank()) said.add(say.it("head detail {0}", note.headDetail()));
        if (!note.jambDetail().isBlank()) said.add(say.it("jamb detail {0}", note.jambDetail()));
        if (!note.sillDetail().isBlank()) said.add(say.it("sill detail {0}", note.sillDetail()));
        if (!note.remarks().isBlank()) said.add(note.remarks());
        return String.join("; ", said) + ".";
    }

    /** How many rows and openings there are of each kind. */
    public static String counts(Outcome outcome) {
        long out = outcome.rows().stream().filter(RowOutcome::leftOut).count();
        long faulty =
                outcome.rows().stream().filter(row -> !row.faults().isEmpty()).count();
        return "%,d rows: %,d openings new, %,d changed, %,d same, %,d begun and left as they are; %,d of the site are not in the schedule and stay. %s%s"
                .formatted(
                        outcome.rows().size(),
                        outcome.openings(Kind.NEW).size(),
                        outcome.openings(Kind.CHANGED).size(),
                        outcome.openings(Kind.SAME).size(),
                        outcome.openings(Kind.HELD).size(),
                        outcome.missing().size(),
                        faulty == 0
                                ? "Nothing is wrong."
                                : "%,d %s to put right.".formatted(faulty, faulty == 1 ? "row" : "rows"),
                        out == 0 ? "" : " %,d left out.".formatted(out));
    }

    public static String fault(CellFault fault) {
        return "%s; %s accepted".formatted(fault.wrong(), fault.accepted());
    }

    /** The row as it stands in the file, cell after cell. */
    public static String asItStands(Sheet.Row row) {
        return row.cells().stream().filter(cell -> !cell.isBlank()).collect(Collectors.joining(" · "));
    }

    public static String column(Header header, int column) {
        String title = header.titles().get(column);
        return "%s: %s".formatted(Sheet.letters(column), title.isBlank() ? "no title" : title);
    }
}
