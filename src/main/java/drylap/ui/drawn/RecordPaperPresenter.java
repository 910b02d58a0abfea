package drylap.ui.drawn;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import drylap.assembly.LapSection;
import drylap.assembly.RainRating;
import drylap.handoff.Custody;
import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.papers.DaySheet;
import drylap.papers.RecordSheet;
import drylap.papers.RecordSheet.Act;
import drylap.papers.RecordSheet.Fact;
import drylap.papers.RecordSheet.Row;
import drylap.progress.OpeningState;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a hand-over record says on paper. */
public final class RecordPaperPresenter {
    private RecordPaperPresenter() {}

    /**
     * What goes on the paper beside the record itself.
     *
     * @param then the openings as they stood when the act was written; one that cannot be told any more is missing
     * @param holds hold points of the site, in words
     * @param photos with what is said of each
     * @param left what of photos is not on the paper
     */
    public record Beside(
            Map<OpeningId, OpeningState> then, List<String> holds, List<RecordSheet.Photo> photos, String left) {}

    public static RecordSheet sheet(
            Speech say, HandoffPaper paper, Beside beside, Instant now, ZoneId zone, String link) {
        return new RecordSheet(
                say,
                paper.title(),
                say.it(
                        "Hand-over record {0}; printed {1}. What was done since is on the screen that the code opens.",
                        paper.id(), say.moment(now, zone)),
                paper.facts().stream()
                        .map(fact -> new Fact(fact.name(), fact.value()))
                        .toList(),
                beside.holds(),
                link,
                rows(say, paper, beside),
                paper.chain().stream()
                        .map(one -> new Act(one.when(), one.what(), one.who(), one.openings(), one.self()))
                        .toList(),
                kinds(say, beside),
                beside.photos(),
                beside.left());
    }

    private static List<Row> rows(Speech say, HandoffPaper paper, Beside beside) {
        return paper.lines().stream()
                .map(line -> row(say, line, Optional.ofNullable(beside.then().get(new OpeningId(line.opening())))))
                .toList();
    }

    private static Row row(Speech say, HandoffPaper.Line line, Optional<OpeningState> then) {
        var rating = Coded.parse(RainRating.class, line.rating())
                .map(one -> say.it(one.words()))
                .orElse("");
        return new Row(
                line.opening(),
                then.map(state -> FrontOf.glyph(WallPresenter.glyph(say, state, Custody.UNRELEASED))),
                List.of(line.place(), "%s: %s".formatted(line.rating(), rating), line.state()));
    }

    /** As they stood then: what was missing is drawn as missing. Openings that look alike share a drawing. */
    private static List<DaySheet.Kind> kinds(Speech say, Beside beside) {
        Map<String, List<OpeningState>> alike = beside.then().values().stream()
                .collect(groupingBy(
                        state -> new LapSection(state.built(), LapSection.Layout.STACKED, LapSection.Colours.PRINT, say)
                                .svg(),
                        LinkedHashMap::new,
                        toList()));
        return alike.entrySet().stream()
                .map(kind -> new DaySheet.Kind(
                        words(say, kind.getValue().getFirst()), names(kind.getValue()), kind.getKey()))
                .toList();
    }

    private static String names(List<OpeningState> states) {
        return states.stream().map(state -> state.opening().id().value()).collect(joining(", "));
    }

    private static String words(Speech say, OpeningState state) {
        String words = say.it(Words.method(state.opening().method()));
        return say.it(
                "{0}; {1}. As it stood then.",
                Character.toUpperCase(words.charAt(0)) + words.substring(1),
                Saying.of(Words.approach(state.opening().approach())));
    }
}
