package drylap.ui.planner;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import drylap.ui.drawn.ScheduleWords;
import drylap.windowschedule.CellFault;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Field;
import drylap.windowschedule.RowOutcome;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One row with what is wrong in it, each cell to be rewritten. */
final class FaultCard extends Div {
    private final transient Consumer<Draft> change;
    private final Div cells = new Div();
    private final Paragraph becomes = new Paragraph();
    private final Checkbox out;
    private final transient Map<Field, TextField> fields = new EnumMap<>(Field.class);
    private transient @Nullable Draft draft;
    private final int row;

    FaultCard(RowOutcome first, Consumer<Draft> change) {
        this.change = change;
        row = first.number();
        addClassName("fault-card");
        cells.addClassName("asked");
        out = new Checkbox("Leave row %d out: it is no opening".formatted(row));
        out.addValueChangeListener(event -> {
            if (event.isFromClient() && draft != null) change.accept(draft.leavingOut(row, event.getValue()));
        });
        var stands = new Paragraph(ScheduleWords.asItStands(first.row()));
        stands.addClassName("as-it-stands");
        add(new H3("Row %d".formatted(row)), stands, cells, becomes, out);
    }

    void show(Draft now, RowOutcome outcome) {
        draft = now;
        outcome.faults().forEach(fault -> fields.computeIfAbsent(fault.field(), field -> ask(now, outcome, field)));
        fields.forEach((field, cell) -> {
            Optional<CellFault> wrong = outcome.faults().stream()
                    .filter(fault -> fault.field() == field)
                    .findFirst();
            cell.setInvalid(wrong.isPresent());
            cell.setErrorMessage(wrong.map(ScheduleWords::fault).orElse(""));
            cell.setEnabled(!outcome.leftOut());
        });
        out.setValue(outcome.leftOut());
        String names = outcome.openings().stream()
                .map(one -> "%s (%s)".formatted(one.id(), ScheduleWords.kind(one.kind())))
                .collect(Collectors.joining(", "));
        becomes.setText(outcome.leftOut() ? "Left out." : names.isEmpty() ? "" : "Right. It becomes " + names + ".");
    }

    private TextField ask(Draft now, RowOutcome outcome, Field field) {
        String column = now.columns().containsKey(field)
                ? ", column "
                        + drylap.windowschedule.Sheet.letters(
                                Objects.requireNonNull(now.columns().get(field)))
                : "";
        var cell = new TextField(field.words() + column);
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
