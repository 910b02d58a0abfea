package drylap.ui.drawn;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toMap;

import drylap.handoff.Custody;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.progress.OpeningState;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.Aprons.CourseSheet;
import drylap.ui.drawn.Aprons.Face;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** Sorts the openings that someone may see by facade and course, and says of each course what its next trade asks. */
public final class ApronPresenter {
    private final Speech say;
    private final ApronFacts facts;
    private final Person who;
    private final Optional<Trade> trade;
    private final Coming coming;

    private ApronPresenter(ApronFacts facts, Person who) {
        this.facts = facts;
        this.who = who;
        say = new Speech(who.reading());
        coming = new Coming(say, facts);
        trade = who.may(Operation.MARK_FOLLOW_ON) ? facts.trade(who.crew()) : Optional.empty();
    }

    public static Aprons aprons(ApronFacts facts, Person who) {
        var presenter = new ApronPresenter(facts, who);
        Map<FacadeId, List<OpeningState>> faces = facts.states().stream()
                .collect(groupingBy(state -> state.opening().facade(), LinkedHashMap::new, toList()));
        return new Aprons(
                facts.id(),
                faces.entrySet().stream()
                        .map(face -> presenter.face(face.getKey(), face.getValue()))
                        .toList());
    }

    private Face face(FacadeId id, List<OpeningState> states) {
        var first = states.getFirst();
        Map<Integer, List<OpeningState>> courses =
                states.stream().collect(groupingBy(state -> state.opening().level(), TreeMap::new, toList()));
        List<CourseSheet> sheets = courses.values().stream().map(this::course).toList();
        return new Face(
                id,
                facts.title(first),
                (int) states.stream().filter(this::waitsForAcceptance).count(),
                WallPresenter.wall(
                        facts.title(first),
                        say.it(Words.heading(facts.facade(first))),
                        states,
                        state -> state.opening().level(),
                        state -> WallPresenter.glyph(say, state, facts.custody(state))),
                sheets);
    }

    private CourseSheet course(List<OpeningState> states) {
        return new CourseSheet(
                states.getFirst().opening().level(),
                ready(states),
                states.stream().map(ApronWords::lap).map(say::it).distinct().toList(),
                SunLeft.words(say, states),
                SunLeft.isShort(states),
                states.stream().flatMap(state -> returned(state).stream()).toList(),
                coming.of(states),
                acceptable(states),
                toMark(states));
    }

    private String ready(List<OpeningState> states) {
        long ready = states.stream().filter(state -> facts.hand(state).letGo()).count();
        long accepted = states.stream()
                .filter(state -> facts.hand(state) == Hand.ACCEPTED)
                .count();
        String words = say.it("apron ready at {0} of {1}", ready, states.size());
        return accepted == 0 ? words : say.it("{0}, {1} accepted", words, accepted);
    }

    private Optional<String> returned(OpeningState state) {
        return facts.custody(state) instanceof Custody.Returned returned
                ? Optional.of(
                        say.it("{0}: {1}", state.opening().id(), ApronWords.returned(say, returned, facts.site(state))))
                : Optional.empty();
    }

    private Seen acceptable(List<OpeningState> states) {
        return new Seen(states.stream()
                .filter(state -> who.may(Operation.ACCEPT, state.site()))
                .filter(this::waitsForAcceptance)
                .collect(toMap(state -> state.opening().id(), OpeningState::version)));
    }

    private boolean waitsForAcceptance(OpeningState state) {
        return facts.hand(state) == Hand.RELEASED;
    }

    private List<LineToMark> toMark(List<OpeningState> states) {
        return trade.map(own -> linesOf(say, states, own)).orElse(List.of());
    }

    static List<LineToMark> linesOf(Speech say, List<OpeningState> states, Trade own) {
        var codes = states.stream()
                .flatMap(state -> state.list().lines().stream())
                .filter(line -> line.trade() == own)
                .map(drylap.assembly.WorkLine::code)
                .distinct();
        return codes.map(code -> line(say, states, code))
                .filter(Objects::nonNull)
                .toList();
    }

    private static @org.jspecify.annotations.Nullable LineToMark line(
            Speech say, List<OpeningState> states, String code) {
        List<OpeningId> open = new java.util.ArrayList<>();
        int allowed = 0;
        String text = "";
        for (var state : states) {
            var line = state.list().line(code).orElse(null);
            if (line == null || state.done().contains(code)) continue;
            open.add(state.opening().id());
            text = say.it(line.saying());
            if (state.next().contains(line)) allowed++;
        }
        return open.isEmpty() ? null : new LineToMark(code, text, List.copyOf(open), allowed);
    }
}
