package drylap.ui.planner;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import drylap.speech.Speech;
import drylap.ui.drawn.ScheduleWords;
import drylap.windowschedule.CellFault;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Field;
import drylap.windowschedule.RowOutcome;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One row with what is wrong in it, each cell to be rewritten. */
final class FaultCard extends Div {
    private final transient Speech say;
    private final transient Consumer<Draft> change;
    private final Div cells = new Div();
    private final Paragraph becomes = new Paragraph();
    private final Checkbox out;
    private final transient Map<Field, TextField> fields = new EnumMap<>(Field.class);
    private transient @Nullable Draft draft;
    private final int row;

    FaultCard(Speech say, RowOutcome first, Consumer<Draft> change) {
        this.say = say;
        this.change = change;
        row = first.number();
        addClassName("fault-card");
        cells.addClassName("asked");
        out = new Checkbox(say.it("Leave row {0} out: it is no opening", row));
        out.addValueChangeListener(event -> {
            if (event.isFromClient() && draft != null) change.accept(draft.leavingOut(row, event.getValue()));
        });
        var stands = new Paragraph(ScheduleWords.asItStands(say, first.row()));
        stands.addClassName("as-it-stands");
        add(new H3(say.it("Row {0}", row)), stands, cells, becomes, out);
    }

    void show(Draft now, RowOutcome outcome) {
        draft = now;
        outcome.faults().forEach(fault -> fields.computeIfAbsent(fault.field(), field -> ask(now, outcome, field)));
        fields.forEach((field, cell) -> {
            Optional<CellFault> wrong = outcome.faults().stream()
                    .filter(fault -> fault.field() == field)
                    .findFirst();
            cell.setInvalid(wrong.isPresent());
            cell.setErrorMessage(wrong.map(one -> ScheduleWords.fault(say, one)).orElse(""));
            cell.setEnabled(!outcome.leftOut());
        });
        out.setValue(outcome.leftOut());
        String names = outcome.openings().stream()
                .map(one -> "%s (%s)".formatted(one.id(), ScheduleWords.kind(say, one.kind())))
                .collect(Collectors.joining(", "));
        becomes.setText(
                outcome.leftOut()
                        ? say.it("Left out.")
                        : names.isEmpty() ? "" : say.it("Right. It becomes {0}.", names));
    }

    private TextField ask(Draft now, RowOutcome outcome, Field field) {
        Integer column = now.columns().get(field);
        String label = say.it(field.words());
        var cell = new TextField(
                column == null ? label : say.it("{0}, column {1}", label, drylap.windowschedule.Sheet.letters(column)));
        cell.setValue(now.text(outcome.row(), field));
        cell.setManualValidation(true);
        cell.addValueChangeListener(event -> {
            if (event.isFromClient() && draft != null)
                change.accept(draft.withEdit(new Draft.Cell(row, field), event.getValue()));
        });
        cells.add(cell);
        return cell;
    }
}
