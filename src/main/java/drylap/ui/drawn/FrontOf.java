package drylap.ui.drawn;

import drylap.papers.Front;

/** The drawing of an opening as papers take it. */
final class FrontOf {
    private FrontOf() {}

    static Front glyph(Wall.Glyph glyph) {
        return new Front(
                glyph.widthMm(),
                glyph.heightMm(),
                glyph.water(),
                part(glyph.apron()),
                part(glyph.pan()),
                part(glyph.window()),
                part(glyph.jambs()),
                part(glyph.head()),
                part(glyph.flap()),
                part(glyph.wrap()),
                part(glyph.second()),
                part(glyph.clad()),
                glyph.edgeHeld());
    }

    private static Front.Part part(Wall.Part part) {
        return switch (part) {
            case ON -> Front.Part.ON;
            case MISSING -> Front.Part.MISSING;
            case LATER -> Front.Part.LATER;
            case NONE -> Front.Part.NONE;
        };
    }
}
