package drylap.ui.admin;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.security.Person;
import drylap.ui.shell.TroubleLine;
import java.util.List;

/** Asks for something of another program: a name, for whom, and what else it takes. */
final class ProgramDialog extends Dialog {
    private final TextField name = new TextField("Name");
    private final Select<Person> person = new Select<>();
    private final TroubleLine trouble = new TroubleLine();

    /** @param people for whom it may be; one alone is not asked for */
    ProgramDialog(String title, String hint, List<Person> people, Person usual, Component... more) {
        setHeaderTitle(title);
        name.setHelperText(hint);
        person.setLabel("For");
        person.setItems(people);
        person.setItemLabelGenerator(
                one -> "%s (%s)".formatted(one.name(), one.role().words()));
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
        var save = new Button("Make", _ -> {
            try {
                make.run();
            } catch (IllegalArgumentException refused) {
                trouble.say(String.valueOf(refused.getMessage()));
            }
        });
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button("Cancel", _ -> close()), save);
        return this;
    }
}
