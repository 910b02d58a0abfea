package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import drylap.crews.AbsenceRequest;
import drylap.crews.AbsenceResult;
import drylap.crews.Absences;
import drylap.kernel.FolderId;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.CrewsSheet;
import drylap.ui.shell.TroubleLine;
import java.time.Duration;

/** Says when a crew does not come, and why. */
final class AbsenceDialog extends Dialog {
    private final transient Absences absences;
    private final transient Person who;
    private final transient FolderId folder;
    private final transient CrewsSheet.OneCrew crew;
    private final transient Runnable after;
    private final transient Speech say;
    private final Select<CrewsSheet.Day> day = new Select<>();
    private final Checkbox wholeDay = new Checkbox(true);
    private final TimePicker from = new TimePicker();
    private final TimePicker until = new TimePicker();
    private final TextField reason = new TextField();
    private final TroubleLine trouble = new TroubleLine();

    AbsenceDialog(Absences absences, Person who, FolderId folder, CrewsSheet.OneCrew crew, Runnable after) {
        this.absences = absences;
        this.who = who;
        this.folder = folder;
        this.crew = crew;
        this.after = after;
        say = new Speech(who.reading());
        label();
        fill();
        var fields = new Div(day, wholeDay, from, until, reason);
        fields.addClassName("fields");
        add(fields, trouble);
        var save = new Button(say.it("Save"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }

    private void label() {
        setHeaderTitle(say.it("Crew {0} is away", crew.crew()));
        day.setLabel(say.it("Day"));
        wholeDay.setLabel(say.it("All day"));
        from.setLabel(say.it("Away from"));
        until.setLabel(say.it("Away until"));
        reason.setLabel(say.it("Reason"));
    }

    private void fill() {
        var working = crew.days().stream().filter(CrewsSheet.Day::works).toList();
        day.setItems(working);
        day.setItemLabelGenerator(CrewsSheet.Day::when);
        // the hours stand below: beside the day they are cut off on a phone
        day.addValueChangeListener(event -> day.setHelperText(event.getValue().hours()));
        if (!working.isEmpty()) day.setValue(working.getFirst());
        for (var time : new TimePicker[] {from, until}) {
            time.setStep(Duration.ofMinutes(15));
            time.setVisible(false);
        }
        wholeDay.addValueChangeListener(event -> {
            from.setVisible(!event.getValue());
            until.setVisible(!event.getValue());
        });
    }

    private void save() {
        if (day.isEmpty()) {
            trouble.say(say.it("Choose a day; crew {0} has no day left to be away on.", crew.crew()));
            return;
        }
        boolean all = wholeDay.getValue();
        var request = new AbsenceRequest(
                crew.crew(),
                day.getValue().date(),
                all ? null : from.getValue(),
                all ? null : until.getValue(),
                reason.getValue());
        if (!all && from.isEmpty() && until.isEmpty()) trouble.say(say.it("Give both times, or choose all day."));
        else if (absences.add(who, folder, request) instanceof AbsenceResult.Refused(var why)) trouble.say(say.it(why));
        else done();
    }

    private void done() {
        close();
        after.run();
    }
}
