package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.ui.drawn.OddsTable;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** A table that is unfolded to be read, or taken along as a file with the same cells. */
final class OddsTablePanel extends Div {
    OddsTablePanel(OddsDesk desk, OddsTable table) {
        addClassName("odds-table");
        var scrolled = new Div(drawn(table));
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", table.caption());
        var details = new NativeDetails("Table: " + lowered(table.caption()), scrolled);
        add(details, download(desk, table));
    }

    private static NativeTable drawn(OddsTable table) {
        NativeTable drawn = Panels.table(table.heads().toArray(String[]::new));
        table.rows()
                .forEach(row -> Panels.row(
                        drawn,
                        row.stream().map(cell -> Panels.text(cell.shown())).toArray(Component[]::new)));
        return drawn;
    }

    private static Anchor download(OddsDesk desk, OddsTable table) {
        var file = new Anchor(
                DownloadHandler.fromInputStream(_ -> {
                    byte[] bytes = desk.file(table).getBytes(StandardCharsets.UTF_8);
                    return new DownloadResponse(
                            new ByteArrayInputStream(bytes), table.file(), "text/csv; charset=utf-8", bytes.length);
                }),
                "As a file (CSV)");
        file.getElement().setAttribute("download", table.file());
        file.getElement().setAttribute("aria-label", "%s, as a file (CSV)".formatted(table.caption()));
        return file;
    }

    private static String lowered(String caption) {
        return Character.toLowerCase(caption.charAt(0)) + caption.substring(1);
    }
}
