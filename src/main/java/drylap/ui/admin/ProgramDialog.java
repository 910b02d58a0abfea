package drylap.ui.admin;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.shell.TroubleLine;
import java.util.List;

/** Asks for something of another program: a name, for whom, and what else it takes. */
final class ProgramDialog extends Dialog {
    private final transient Speech say;
    private final TextField name = new TextField();
    private final Select<Person> person = new Select<>();
    private final TroubleLine trouble = new TroubleLine();

    /** @param people for whom it may be; one alone is not asked for */
    ProgramDialog(Speech say, String title, String hint, List<Person> people, Person usual, Component... more) {
        this.say = say;
        setHeaderTitle(title);
        name.setLabel(say.it("Name"));
        name.setHelperText(hint);
        person.setLabel(say.it("For"));
        person.setItems(people);
        person.setItemLabelGenerator(
                one -> "%s (%s)".formatted(one.name(), say.it(one.role().words())));
        person.setValue(usual);
        person.setVisible(people.size() > 1);
        var fields = new Div(name, person);
        fields.add(more);
        fields.addClassName("fields");
        add(fields, trouble);
    }

    String name() {
        return name.getValue();
    }

    Person person() {
        return person.getValue();
    }

    /** @param make throws {@link IllegalArgumentException} with what would be accepted */
    ProgramDialog onMake(Runnable make) {
        var save = new Button(say.it("Make"), _ -> {
            try {
                make.run();
            } catch (IllegalArgumentException refused) {
                trouble.say(say.it(Unfit.saying(refused)));
            }
        });
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
        return this;
    }
}
