package drylap.ui.drawn;

import drylap.assembly.Approach;
import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.RainCheck;
import drylap.assembly.RainRating;
import drylap.assembly.StepList;
import drylap.assembly.Variant;
import drylap.kernel.FacadeId;
import drylap.sites.Opening;
import drylap.ui.drawn.Wall.Glyph;
import drylap.ui.drawn.Wall.Part;
import drylap.ui.drawn.Wall.WallCourse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Draws a facade from what was done at each of its openings. */
public final class WallPresenter {
    private WallPresenter() {}

    public static Wall wall(FolderShown shown, FacadeId facade) {
        Map<Integer, List<Opening>> courses = shown.folder().openings().stream()
                .filter(opening -> opening.facade().equals(facade))
                .collect(Collectors.groupingBy(Opening::level, TreeMap::new, Collectors.toList()));
        return new Wall(
                shown.title(facade),
                Words.heading(shown.facade(facade)),
                courses.entrySet().stream()
                        .map(course -> new WallCourse(
                                course.getKey(),
                                course.getValue().stream()
                                        .map(WallPresenter::glyph)
                                        .toList()))
                        .toList());
    }

    public static Glyph glyph(Opening opening) {
        AsBuilt built = built(opening);
        RainRating rating = RainCheck.of(built).rating();
        boolean begun = opening.stepList().begun(opening.done());
        boolean drained = opening.approach() == Approach.DRAINAGE;
        return new Glyph(
                opening.id().value(),
                opening.widthMm(),
                opening.heightMm(),
                progress(opening),
                "%s; %s; %d × %d mm"
                        .formatted(progress(opening), rating.words(), opening.widthMm(), opening.heightMm()),
                rating.code(),
                begun && !rating.mayBeLeft(),
                part(built, Layer.APR, begun),
                drained ? part(built, Layer.PAN, begun) : Part.NONE,
                part(built, Layer.FLS, begun),
                part(built, Layer.JF, begun),
                part(built, Layer.HF, begun),
                flap(opening, built, begun),
                built.has(Layer.W1J) ? Part.ON : Part.LATER,
                built.has(Layer.CLD) ? Part.ON : Part.LATER);
    }

    static AsBuilt built(Opening opening) {
        return AsBuilt.afterLine(
                new Variant(opening.method(), opening.approach(), opening.secondLayer()), opening.done());
    }

    static String progress(Opening opening) {
        StepList list = opening.stepList();
        int done = opening.done();
        if (done == 0) return "not begun";
        if (!list.begun(done)) return "accepted";
        if (list.open(done)) return "line %d of %d".formatted(done, list.last());
        return done == list.last() ? "released" : "laps on";
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
