package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.server.streams.DownloadEvent;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.speech.Speech;
import drylap.tables.Cell;
import drylap.tables.Table;
import drylap.tables.Workbook;
import java.io.ByteArrayInputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Takes a table of the screen along as a workbook: the same cells, those that hold numbers and times as such. */
public final class SpreadsheetLink extends Anchor {
    private final transient Supplier<Table> table;

    /**
     * The table as it stands on the screen when the link is followed.
     *
     * @param where the site, or what the table is of
     */
    public SpreadsheetLink(Speech say, String where, String what, NativeTable shown) {
        this(say, where, what, () -> shown);
    }

    /** @param whole makes the table where the screen shows only its beginning */
    public SpreadsheetLink(Speech say, String where, String what, Supplier<NativeTable> whole) {
        this.table = () -> read(what, whole.get());
        setText(say.it("Spreadsheet"));
        addClassName("spreadsheet");
        getElement().setAttribute("aria-label", say.it("{0}, as a spreadsheet (XLSX)", what));
        setHref(DownloadHandler.fromInputStream(event -> response(event, where, what)));
        getElement().setAttribute("download", true);
    }

    /** What a component of a cell stands for, where that is more than its words. */
    public static Span typed(Span shown, Cell cell) {
        ComponentUtil.setData(shown, Cell.class, cell);
        return shown;
    }

    /** What is in the file. */
    public Table table() {
        return table.get();
    }

    private DownloadResponse response(DownloadEvent event, String where, String what) {
        byte[][] made = {{}};
        event.getUI().accessSynchronously(() -> made[0] = Workbook.xlsx(table()));
        var clock = event.getSession().getService().getInstantiator().getOrCreate(Clock.class);
        String name = Workbook.fileName(where, what, LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()));
        return new DownloadResponse(new ByteArrayInputStream(made[0]), name, Workbook.MEDIA_TYPE, made[0].length);
    }

    /** A column without a head has buttons and bars, which are for the screen only. */
    static Table read(String what, NativeTable shown) {
        var heads = shown.getHead()
                .getChildren()
                .flatMap(Component::getChildren)
                .map(SpreadsheetLink::words)
                .toList();
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) if (!heads.get(i).isBlank()) kept.add(i);
        List<List<Cell>> rows = shown.getBody()
                .getChildren()
                .map(row -> row(row.getChildren().toList(), kept))
                .toList();
        return new Table(what, kept.stream().map(heads::get).toList(), rows);
    }

    private static List<Cell> row(List<Component> cells, List<Integer> kept) {
        return kept.stream()
                .filter(i -> i < cells.size())
                .map(i -> cell(cells.get(i)))
                .toList();
    }

    private static Cell cell(Component cell) {
        Cell typed = typed(cell);
        return typed == null ? new Cell.Text(words(cell)) : typed;
    }

    private static @Nullable Cell typed(Component component) {
        Cell own = ComponentUtil.getData(component, Cell.class);
        if (own != null) return own;
        return component
                .getChildren()
                .map(SpreadsheetLink::typed)
                .filter(one -> one != null)
                .findFirst()
                .orElse(null);
    }

    /** As a reader hears it: what is drawn for the eye only is left out. */
    private static String words(Component component) {
        if (component instanceof Button || "true".equals(component.getElement().getAttribute("aria-hidden"))) return "";
        var parts = component
                .getChildren()
                .map(SpreadsheetLink::words)
                .filter(words -> !words.isBlank())
                .toList();
        return parts.isEmpty() ? component.getElement().getText().strip() : String.join(" ", parts);
    }
}
