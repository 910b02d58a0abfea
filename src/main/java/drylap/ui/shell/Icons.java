package drylap.ui.shell;

import com.vaadin.flow.component.Svg;

/** Our own small drawings; each stands beside words, so it is hidden from those who hear the page. */
public enum Icons {
    /** A head flashing that laps over a jamb, and the drop that it turns away. */
    MARK("0 0 28 28", """
            <path d="M3 4h22v5H9v15H3Z" fill="currentColor"/><path d="M9 9h16v3.5H12.5V24H9Z" class="second"/>\
            <path d="M20 15.5c1.9 2.5 3.2 4.2 3.2 5.9a3.2 3.2 0 0 1-6.4 0c0-1.7 1.3-3.4 3.2-5.9Z" class="drop"/>"""),
    CAUTION("0 0 20 20", "<path d=\"M10 2.5 18.5 17.5H1.5Z\"/><path d=\"M10 8v4.5M10 14.3v1.2\"/>"),
    DROP("0 0 20 20", "<path d=\"M10 2c3.3 4.3 5.7 7.5 5.7 10.4a5.7 5.7 0 0 1-11.4 0C4.3 9.5 6.7 6.3 10 2Z\"/>"),
    DONE("0 0 20 20", "<path d=\"M4 10.5 8.5 15 16 5.5\"/>"),
    NEXT("0 0 20 20", "<path d=\"M4 10h11M10.5 5l5 5-5 5\"/>");

    private final String box;
    private final String drawing;

    Icons(String box, String drawing) {
        this.box = box;
        this.drawing = drawing;
    }

    public Svg svg() {
        var svg = new Svg(
                "<svg viewBox=\"%s\" aria-hidden=\"true\" focusable=\"false\">%s</svg>".formatted(box, drawing));
        svg.addClassNames("icon", name().toLowerCase(java.util.Locale.ROOT));
        return svg;
    }
}
