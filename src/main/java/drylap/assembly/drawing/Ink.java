package drylap.assembly.drawing;

import drylap.assembly.LapSection.Colours;

/** The colours of the drawing, each with 4.5 : 1 or more on its paper where it carries text. */
enum Ink {
    PAPER("paper", "#ffffff", "#12181f"),
    TEXT("text", "#17202b", "#eef2f6"),
    MUTED("muted", "#566173", "#a7b2c0"),
    WALL("wall", "#e6dccb", "#3a352c"),
    FRAME("frame", "#5f6b78", "#93a0ae"),
    GLASS("glass", "#c9dbe8", "#2b3d4d"),
    BARRIER("barrier", "#7a5195", "#c9a6e8"),
    SECOND("second-barrier", "#2f6d4f", "#84cfa6"),
    FLASHING("flashing", "#8a5a00", "#f0bf5a"),
    PAN("pan", "#17202b", "#dfe6ee"),
    CLADDING("cladding", "#8c7a66", "#b5a48f"),
    WATER("water", "#0b5cc4", "#74bbff"),
    FAULT("fault", "#b3201a", "#ff9a90"),
    SAFE("safe", "#1b6b3a", "#7ed6a0");

    private final String token;
    private final String light;
    private final String dark;

    Ink(String token, String light, String dark) {
        this.token = token;
        this.light = light;
        this.dark = dark;
    }

    String on(Colours colours) {
        return colours == Colours.PRINT ? light : "var(--lap-%s,light-dark(%s,%s))".formatted(token, light, dark);
    }
}
