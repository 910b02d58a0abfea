package drylap.ui.drawn;

import drylap.sites.Opening;
import drylap.sites.OpeningNote;
import drylap.speech.Part;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.windowschedule.CellFault;
import drylap.windowschedule.Header;
import drylap.windowschedule.OpeningOutcome;
import drylap.windowschedule.OpeningOutcome.Difference;
import drylap.windowschedule.OpeningOutcome.Kind;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.RowOutcome;
import drylap.windowschedule.ScheduleSaid;
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

    public static String kind(Speech say, Kind kind) {
        return say.it(
                switch (kind) {
                    case NEW -> "new";
                    case CHANGED -> "changed";
                    case SAME -> "same";
                    case HELD -> "begun, stays as it is";
                });
    }

    public static List<Line> lines(Speech say, Outcome outcome) {
        return outcome.rows().stream()
                .flatMap(row -> row.openings().stream().map(one -> line(say, row, one)))
                .toList();
    }

    private static Line line(Speech say, RowOutcome row, OpeningOutcome one) {
        Opening becomes = one.becomes();
        return new Line(
                row.number(),
                one.id().value(),
                one.kind(),
                place(say, becomes),
                "%d × %d mm".formatted(becomes.widthMm(), becomes.heightMm()),
                say.it(
                        "{0}, method {1}, {2}, second layer {3}, from {4}",
                        Saying.of(becomes.frame().code()),
                        becomes.method().code(),
                        Saying.of(becomes.approach().code()),
                        Saying.of(becomes.secondLayer().code()),
                        becomes.deliveredOn()),
                one.differences().stream()
                        .map(difference -> difference(say, difference))
                        .collect(Collectors.joining("; ")));
    }

    public static String place(Speech say, Opening opening) {
        return say.it("{0}, level {1}", opening.facade().facade(), opening.level());
    }

    private static String difference(Speech say, Difference one) {
        var what = ScheduleSaid.read(one.what());
        return one.held()
                ? say.it("{0} stays {1}, the schedule says {2}", what, one.was(), one.said())
                : say.it("{0} {1} instead of {2}", what, one.said(), one.was());
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
    public static String counts(Speech say, Outcome outcome) {
        long out = outcome.rows().stream().filter(RowOutcome::leftOut).count();
        long faulty =
                outcome.rows().stream().filter(row -> !row.faults().isEmpty()).count();
        String counts = say.it(
                "{0} rows: {1} openings new, {2} changed, {3} same, {4} begun and left as they are; {5} of the site are not in the schedule and stay.",
                many(outcome.rows().size()),
                many(outcome.openings(Kind.NEW).size()),
                many(outcome.openings(Kind.CHANGED).size()),
                many(outcome.openings(Kind.SAME).size()),
                many(outcome.openings(Kind.HELD).size()),
                many(outcome.missing().size()));
        String wrong = faulty == 0
                ? say.it("Nothing is wrong.")
                : say.it("{0, plural, one {# row} other {# rows}} to put right.", faulty);
        return counts + " " + wrong + (out == 0 ? "" : " " + say.it("{0} left out.", many(out)));
    }

    /** With a comma between the thousands, as numbers of Spanish in the United States have it too. */
    public static String many(long number) {
        return "%,d".formatted(number);
    }

    public static String fault(Speech say, CellFault fault) {
        return say.it("{0}; {1} accepted", ScheduleSaid.read(fault.wrong()), ScheduleSaid.read(fault.accepted()));
    }

    /** The row as it stands in the file, cell after cell. */
    public static String asItStands(Speech say, Sheet.Row row) {
        return row.cells().stream()
                .filter(cell -> !cell.isBlank())
                .map(cell -> say.it(ScheduleSaid.read(cell)))
                .collect(Collectors.joining(" · "));
    }

    public static String column(Speech say, Header header, int column) {
        String title = header.titles().get(column);
        return "%s: %s".formatted(Sheet.letters(column), title.isBlank() ? say.it("no title") : title);
    }
}
