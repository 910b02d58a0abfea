package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import drylap.speech.Speech;
import java.util.List;
import java.util.function.Consumer;

/** A table that may be long: its first lines, and a button for the others, which cost the server nothing until someone wants them. */
final class LongTable extends Div {
    private static final int LINES_AT_FIRST = 12;

    /**
     * @param all what the button is read as
     * @param line adds the line of a row to the table
     */
    <R> LongTable(Speech say, String all, NativeTable table, List<R> rows, Consumer<R> line) {
        add(table);
        rows.stream().limit(LINES_AT_FIRST).forEach(line);
        if (rows.size() <= LINES_AT_FIRST) return;
        var more = new Button(say.it("Show all {0}", rows.size()));
        more.setAriaLabel(all);
        more.addClickListener(_ -> {
            rows.stream().skip(LINES_AT_FIRST).forEach(line);
            more.removeFromParent();
        });
        add(more);
    }
}
