package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.speech.Speech;
import drylap.tables.Cell;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.OddsTable;
import drylap.ui.drawn.Words;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** A table that is unfolded to be read, or taken along as a file with the same cells. */
final class OddsTablePanel extends Div {
    OddsTablePanel(Speech say, OddsDesk desk, OddsTable table) {
        addClassName("odds-table");
        var scrolled = new Div(drawn(table));
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", table.caption());
        var details = new NativeDetails(say.it("Table: {0}", Words.lowered(table.caption())), scrolled);
        add(details, download(say, desk, table), new SpreadsheetLink(say, "odds", table.caption(), () -> drawn(table)));
    }

    private static NativeTable drawn(OddsTable table) {
        NativeTable drawn = Panels.table(table.heads().toArray(String[]::new));
        table.rows()
                .forEach(row ->
                        Panels.row(drawn, row.stream().map(OddsTablePanel::cell).toArray(Component[]::new)));
        return drawn;
    }

    /** What is written in files tells what it is: a number, a day, a time of ISO 8601, or words. */
    private static Component cell(OddsTable.Cell cell) {
        String written = cell.written();
        var shown = Panels.text(cell.shown());
        if (written.matches("-?\\d{1,15}(\\.\\d+)?"))
            return SpreadsheetLink.typed(shown, new Cell.Number(Double.parseDouble(written), ""));
        if (written.matches("\\d{4}-\\d{2}-\\d{2}"))
            return SpreadsheetLink.typed(shown, new Cell.Day(LocalDate.parse(written)));
        return shown;
    }

    private static Anchor download(Speech say, OddsDesk desk, OddsTable table) {
        var file = new Anchor(
                DownloadHandler.fromInputStream(_ -> {
                    byte[] bytes = desk.file(table).getBytes(StandardCharsets.UTF_8);
                    return new DownloadResponse(
                            new ByteArrayInputStream(bytes), table.file(), "text/csv; charset=utf-8", bytes.length);
                }),
                say.it("As a file (CSV)"));
        file.getElement().setAttribute("download", table.file());
        file.getElement().setAttribute("aria-label", say.it("{0}, as a file (CSV)", table.caption()));
        return file;
    }
}
