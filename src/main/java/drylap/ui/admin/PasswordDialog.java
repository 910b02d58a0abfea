package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import drylap.security.Passwords;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignedIn;

/** Sets someone's password; all their sessions end. */
final class PasswordDialog extends Dialog {
    PasswordDialog(People people, SignedIn signedIn, Person whose) {
        setHeaderTitle("Password of " + whose.name());
        var password = new PasswordField("New password");
        password.setHelperText("%d characters or more".formatted(Passwords.SHORTEST));
        add(new Paragraph("All sessions of this person end."), password);
        var save = new Button("Set the password", _ -> {
            var against = Passwords.against(password.getValue(), whose.signInName(), whose.name())
                    .map(drylap.speech.Saying::words);
            password.setErrorMessage(against.orElse(""));
            password.setInvalid(against.isPresent());
            if (against.isPresent()) return;
            people.setPassword(signedIn.person(), whose.id(), password.getValue());
            close();
        });
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button("Cancel", _ -> close()), save);
    }
}
