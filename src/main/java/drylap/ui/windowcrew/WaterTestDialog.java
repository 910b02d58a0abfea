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
import drylap.speech.Speech;
import drylap.speech.Unfit;
import org.jspecify.annotations.Nullable;

/** Asks how an opening was sprayed, what counted as a leak, and what came of it. */
final class WaterTestDialog extends Dialog {
    /** Sends what was said, with the state that was seen when the form was opened. */
    interface Sender {
        HandoffResult send(WaterTest test, boolean passed, String note);
    }

    private static final int LONGEST_NOTE = 2_000;

    private final transient Speech say;
    private final transient Sender sender;
    private final transient java.util.function.Consumer<HandoffResult> outcome;
    private final RadioButtonGroup<Boolean> passed = new RadioButtonGroup<>();
    private final Select<LeakDefinition> leak = new Select<>();
    private final IntegerField pressure = new IntegerField();
    private final IntegerField minutes = new IntegerField();
    private final TextArea note = new TextArea();
    private final Paragraph trouble = new Paragraph();

    WaterTestDialog(Speech say, OpeningId opening, Sender sender, java.util.function.Consumer<HandoffResult> outcome) {
        this.say = say;
        this.sender = sender;
        this.outcome = outcome;
        setHeaderTitle(say.it("Water test of {0}", opening));
        label();
        passed.setItems(true, false);
        passed.setItemLabelGenerator(well -> say.it(well ? "passed: no leak" : "failed: it leaks"));
        leak.setItems(LeakDefinition.values());
        leak.setItemLabelGenerator(one -> say.it(one.words()));
        note.setMaxLength(LONGEST_NOTE);
        trouble.addClassName("alarm");
        trouble.getElement().setAttribute("role", "alert");
        var fields = new Div(passed, leak, pressure, minutes, note, trouble);
        fields.addClassName("fields");
        add(fields);
        var save = new Button(say.it("Record it"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }

    private void label() {
        passed.setLabel(say.it("What came of it"));
        leak.setLabel(say.it("What counted as a leak"));
        pressure.setLabel(say.it("Pressure difference, Pa (0: hose only)"));
        minutes.setLabel(say.it("Sprayed for, min"));
        note.setLabel(say.it("Note: where water came in, what was isolated"));
    }

    private void save() {
        String missing = missing();
        if (missing == null) send();
        else trouble.setText(missing);
    }

    private @Nullable String missing() {
        if (passed.isEmpty()) return say.it("Say whether it passed or failed.");
        if (leak.isEmpty()) return say.it("Choose what counted as a leak: documents differ.");
        if (pressure.isEmpty() || minutes.isEmpty())
            return say.it("Give the pressure as whole Pa and the time as whole minutes.");
        if (!passed.getValue() && note.getValue().isBlank()) return say.it("Say in the note where it leaks.");
        return null;
    }

    private void send() {
        try {
            var test = new WaterTest(leak.getValue(), pressure.getValue(), minutes.getValue());
            outcome.accept(sender.send(test, passed.getValue(), note.getValue().strip()));
            close();
        } catch (IllegalArgumentException unfit) {
            trouble.setText(say.it(Unfit.saying(unfit)));
        }
    }
}
