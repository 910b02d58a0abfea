package drylap.assembly.drawing;

import drylap.assembly.AsBuilt;
import drylap.assembly.LapSection;
import drylap.assembly.LapSection.Colours;
import drylap.assembly.LapSection.Layout;
import drylap.assembly.RainCheck;
import drylap.assembly.Variant;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterTrace;
import drylap.assembly.Weakness;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.List;

/** Puts the state in words above the three cuts, wide or stacked. */
public final class Sheet {
    private static final double FOOT = 42;

    private final LapSection section;
    private final Speech say;
    private final AsBuilt built;
    private final RainCheck check;
    private final List<WaterPath> paths;
    private final Canvas canvas;

    public Sheet(LapSection section) {
        this.section = section;
        this.say = section.say();
        this.built = section.built();
        this.check = RainCheck.of(built);
        this.paths = WaterTrace.of(built);
        this.canvas = new Canvas(section.colours(), "lap" + Integer.toHexString(section.hashCode()));
    }

    public String svg() {
        boolean wide = section.layout() == Layout.WIDE;
        double width = wide ? Cut.WIDTH * 3 : Cut.WIDTH + 12;
        var banner = new Banner(check, width, say);
        double height = banner.height() + (wide ? Cut.HEIGHT : Cut.HEIGHT * 3) + FOOT;
        open(width, height);
        canvas.rect(0, 0, width, height, Ink.PAPER);
        banner.paint(canvas);
        var cuts = Cut.values();
        for (int i = 0; i < cuts.length; i++)
            new CutDrawing(cuts[i], built, paths, canvas, say)
                    .paint(wide ? i * Cut.WIDTH : 6, banner.height() + (wide ? 0 : i * Cut.HEIGHT));
        foot(height);
        return canvas.raw("</svg>").toString();
    }

    private void open(double width, double height) {
        String scheme = section.colours() == Colours.FILE ? "color-scheme:light dark;" : "";
        canvas.raw("""
                <svg xmlns='http://www.w3.org/2000/svg' class='lap-section' viewBox='0 0 %d %d' role='img' \
                aria-labelledby='%s %s' style='%swidth:100%%;max-width:%dpx;height:auto;font-family:var(--lap-font,system-ui,"DejaVu Sans",sans-serif)'>
                <title id='%s'>%s</title>
                <desc id='%s'>%s</desc>""".formatted(
                        (int) width,
                        (int) height,
                        canvas.id("title"),
                        canvas.id("desc"),
                        scheme,
                        (int) width,
                        canvas.id("title"),
                        Canvas.escape(title()),
                        canvas.id("desc"),
                        Canvas.escape(spoken())));
        canvas.raw("""
                <defs><pattern id='%s' width='5' height='5' patternUnits='userSpaceOnUse' patternTransform='rotate(45)'>\
                <rect width='2.4' height='5' style='fill:%s'/></pattern>
                <marker id='%s' viewBox='0 0 10 10' refX='6' refY='5' markerWidth='4.5' markerHeight='4.5' orient='auto'>\
                <path d='M0 0L10 5L0 10z' style='fill:%s'/></marker>
                <marker id='%s' viewBox='0 0 12 12' refX='6' refY='6' markerWidth='5' markerHeight='5'>\
                <path d='M1 1L11 11M11 1L1 11' style='stroke:%s;stroke-width:2.6'/></marker></defs>""".formatted(
                        canvas.id("hatch"),
                        canvas.paint(Ink.FAULT),
                        canvas.id("flow"),
                        canvas.paint(Ink.WATER),
                        canvas.id("enter"),
                        canvas.paint(Ink.FAULT)));
    }

    private String title() {
        Variant variant = built.variant();
        return say.it(
                "Lap section: method {0}, {1}, second layer {2}: {3}",
                variant.method(),
                Saying.of(variant.approach().code()),
                Saying.of(variant.secondLayer().code()),
                Saying.of(check.rating().words()));
    }

    private String spoken() {
        var why = Saying.list(
                "; ", check.weaknesses().stream().map(Weakness::saying).toList());
        var water = Saying.list(". ", paths.stream().map(WaterPath::saying).toList());
        String state = say.it("{0}. Water {1}.", built.apron().saying(), water);
        return check.weaknesses().isEmpty() ? state : say.it(why) + ". " + state;
    }

    private void foot(double height) {
        var lines = List.of(
                say.it("Not to scale; the maker's instructions govern."),
                say.it("Says nothing about safe work at height."));
        for (int i = 0; i < lines.size(); i++)
            canvas.text(new Point(14, height - 24 + 14 * i), Ink.MUTED, 11, "", lines.get(i));
    }
}
