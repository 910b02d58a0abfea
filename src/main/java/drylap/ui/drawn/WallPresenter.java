package drylap.ui.drawn;

import drylap.assembly.Approach;
import drylap.assembly.Apron;
import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.RainCheck;
import drylap.assembly.RainRating;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList;
import drylap.assembly.Variant;
import drylap.handoff.Custody;
import drylap.kernel.FacadeId;
import drylap.kernel.Trade;
import drylap.progress.OpeningState;
import drylap.sites.Opening;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.Wall.Glyph;
import drylap.ui.drawn.Wall.Part;
import drylap.ui.drawn.Wall.WallCourse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Draws a facade from what was done at each of its openings. */
public final class WallPresenter {
    private WallPresenter() {}

    public static Wall wall(Speech say, FolderShown shown, FacadeId facade) {
        return wall(
                shown.title(facade),
                say.it(Words.heading(shown.facade(facade))),
                shown.folder().openings().stream()
                        .filter(opening -> opening.facade().equals(facade))
                        .toList(),
                Opening::level,
                opening -> glyph(say, opening));
    }

    static <T> Wall wall(
            String title, String heading, List<T> all, Function<T, Integer> level, Function<T, Glyph> glyph) {
        Map<Integer, List<Glyph>> courses = all.stream()
                .collect(Collectors.groupingBy(level, TreeMap::new, Collectors.mapping(glyph, Collectors.toList())));
        return new Wall(
                title,
                heading,
                courses.entrySet().stream()
                        .map(course -> new WallCourse(course.getKey(), course.getValue()))
                        .toList());
    }

    static Glyph glyph(Speech say, Opening opening) {
        boolean begun = opening.stepList().begun(opening.done());
        return glyph(say, opening, built(opening), begun, said(opening), null);
    }

    /** The same from the log, with the hand-over. */
    static Glyph glyph(Speech say, OpeningState state, Custody custody) {
        var opening = state.opening();
        Hand hand = Hand.of(state, custody);
        boolean begun = state.doneLines().stream().anyMatch(one -> one.line().installBlock());
        return glyph(say, opening, state.built(), begun, Saying.of(progress(state, hand)), hand);
    }

    private static Glyph glyph(
            Speech say, Opening opening, AsBuilt built, boolean begun, Saying progress, @Nullable Hand hand) {
        RainRating rating = RainCheck.of(built).rating();
        boolean drained = opening.approach() == Approach.DRAINAGE;
        return new Glyph(
                opening.id().value(),
                opening.widthMm(),
                opening.heightMm(),
                say.it(progress),
                say.it(
                        "{0}; {1}; {2}",
                        progress,
                        Saying.of(rating.words()),
                        new drylap.speech.Part.Size(opening.widthMm(), opening.heightMm())),
                rating.code(),
                begun && !rating.mayBeLeft(),
                part(built, Layer.APR, begun),
                drained ? part(built, Layer.PAN, begun) : Part.NONE,
                part(built, Layer.FLS, begun),
                part(built, Layer.JF, begun),
                part(built, Layer.HF, begun),
                flap(opening, built, begun),
                later(built, Layer.W1J),
                opening.secondLayer() == SecondLayer.NONE ? Part.NONE : later(built, Layer.W2J),
                later(built, Layer.CLD),
                built.apron() instanceof Apron.Held,
                hand);
    }

    /** In one or two words: they stand below a small drawing. */
    private static String progress(OpeningState state, Hand hand) {
        if (state.list().finished(state.done(), Trade.SIDING)) return "clad";
        if (hand == Hand.RETURNED) return hand.words();
        if (state.list().finished(state.done(), Trade.WRAP)) return "wrapped";
        return hand == Hand.RELEASED_BEFORE ? Hand.RELEASED.words() : hand.words();
    }

    private static Part later(AsBuilt built, Layer layer) {
        return built.has(layer) ? Part.ON : Part.LATER;
    }

    static AsBuilt built(Opening opening) {
        return AsBuilt.afterLine(
                new Variant(opening.method(), opening.approach(), opening.secondLayer()), opening.done());
    }

    private static Saying said(Opening opening) {
        StepList list = opening.stepList();
        int done = opening.done();
        if (done == 0) return Saying.of("not begun");
        if (!list.begun(done)) return Saying.of("accepted");
        if (list.open(done)) return Saying.of("line {0} of {1}", done, list.last());
        return done == list.last() ? Saying.of("released") : Saying.of("laps on");
    }

    private static Part part(AsBuilt built, Layer layer, boolean begun) {
        if (built.has(layer)) return Part.ON;
        return begun ? Part.MISSING : Part.LATER;
    }

    private static Part flap(Opening opening, AsBuilt built, boolean begun) {
        if (!opening.method().barrierFirst()) return Part.NONE;
        if (!begun) return Part.LATER;
        return built.flapUp() ? Part.MISSING : Part.ON;
    }
}
