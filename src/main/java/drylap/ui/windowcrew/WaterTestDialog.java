package drylap.ui.windowcrew;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffResult;
import drylap.handoff.LeakDefinition;
import drylap.kernel.OpeningId;
import org.jspecify.annotations.Nullable;

/** Asks how an opening was sprayed, what counted as a leak, and what came of it. */
final class WaterTestDialog extends Dialog {
    /** Sends what was said, with the state that was seen when the form was opened. */
    interface Sender {
        HandoffResult send(WaterTest test, boolean passed, String note);
    }

    private static final int LONGEST_NOTE = 2_000;

    private final transient Sender sender;
    private final transient java.util.function.Consumer<HandoffResult> outcome;
    private final RadioButtonGroup<Boolean> passed = new RadioButtonGroup<>("What came of it");
    private final Select<LeakDefinition> leak = new Select<>();
    private final IntegerField pressure = new IntegerField("Pressure difference, Pa (0: hose only)");
    private final IntegerField minutes = new IntegerField("Sprayed for, min");
    private final TextArea note = new TextArea("Note: where water came in, what was isolated");
    private final Paragraph trouble = new Paragraph();

    WaterTestDialog(OpeningId opening, Sender sender, java.util.function.Consumer<HandoffResult> outcome) {
        this.sender = sender;
        this.outcome = outcome;
        setHeaderTitle("Water test of " + opening);
        passed.setItems(true, false);
        passed.setItemLabelGenerator(well -> well ? "passed: no leak" : "failed: it leaks");
        leak.setLabel("What counted as a leak");
        leak.setItems(LeakDefinition.values());
        leak.setItemLabelGenerator(LeakDefinition::words);
        note.setMaxLength(LONGEST_NOTE);
        trouble.addClassName("alarm");
        trouble.getElement().setAttribute("role", "alert");
        var fields = new Div(passed, leak, pressure, minutes, note, trouble);
        fields.addClassName("fields");
        add(fields);
        var save = new Button("Record it", _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button("Cancel", _ -> close()), save);
    }

    private void save() {
        String missing = missing();
        if (missing == null) send();
        else trouble.setText(missing);
    }

    private @Nullable String missing() {
        if (passed.isEmpty()) return "Say whether it passed or failed.";
        if (leak.isEmpty()) return "Choose what counted as a leak: documents differ.";
        if (pressure.isEmpty() || minutes.isEmpty())
            return "Give the pressure as whole Pa and the time as whole minutes.";
        if (!passed.getValue() && note.getValue().isBlank()) return "Say in the note where it leaks.";
        return null;
    }

    private void send() {
        try {
            var test = new WaterTest(leak.getValue(), pressure.getValue(), minutes.getValue());
            outcome.accept(sender.send(test, passed.getValue(), note.getValue().strip()));
            close();
        } catch (IllegalArgumentException unfit) {
            trouble.setText(String.valueOf(unfit.getMessage()));
        }
    }
}
