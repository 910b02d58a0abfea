package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import drylap.speech.Speech;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.RowOutcome;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * The rows in which something is wrong, to be put right here. A row stays where it is once it is right, so that a hand at the keyboard keeps
 * its place.
 */
final class ScheduleFaults extends Div {
    private static final int SHOWN = 30;

    private final transient Speech say;
    private final transient Consumer<Draft> change;
    private final Section panel;
    private final Paragraph said = new Paragraph();
    private final Div cards = new Div();
    private final transient Map<Integer, FaultCard> byRow = new LinkedHashMap<>();

    ScheduleFaults(Speech say, Consumer<Draft> change) {
        this.say = say;
        panel = Panels.panel("schedule-faults", say.it("Rows to put right"));
        this.change = change;
        said.getElement().setAttribute("aria-live", "polite");
        cards.addClassName("fault-cards");
        panel.add(said, cards);
        add(panel);
    }

    /** Another file: nothing is shown of the one before. */
    void begin() {
        byRow.clear();
        cards.removeAll();
    }

    void show(Draft draft, Outcome outcome) {
        int waiting = 0;
        for (RowOutcome row : outcome.rows()) {
            FaultCard card = byRow.get(row.number());
            if (card != null) card.show(draft, row);
            else if (!row.faults().isEmpty() && byRow.size() < SHOWN) place(draft, row);
            else if (!row.faults().isEmpty()) waiting++;
        }
        long wrong =
                outcome.rows().stream().filter(row -> !row.faults().isEmpty()).count();
        panel.setVisible(!byRow.isEmpty());
        String many = say.it("{0, plural, one {# row is} other {# rows are}} wrong.", wrong);
        said.setText(
                waiting == 0
                        ? many
                        : many + " "
                                + say.it(
                                        "{0} more are shown once these are right; often one choice above puts many right.",
                                        waiting));
    }

    private void place(Draft draft, RowOutcome row) {
        var card = new FaultCard(say, row, change);
        byRow.put(row.number(), card);
        cards.add(card);
        card.show(draft, row);
    }
}
