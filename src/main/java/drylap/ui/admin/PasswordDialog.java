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
import drylap.speech.Speech;

/** Sets someone's password; all their sessions end. */
final class PasswordDialog extends Dialog {
    PasswordDialog(People people, SignedIn signedIn, Person whose) {
        var say = new Speech(signedIn.reading());
        setHeaderTitle(say.it("Password of {0}", whose.name()));
        var password = new PasswordField(say.it("New password"));
        password.setHelperText(say.it("{0} characters or more", Passwords.SHORTEST));
        add(new Paragraph(say.it("All sessions of this person end.")), password);
        var save = new Button(say.it("Set the password"), _ -> {
            var against = Passwords.against(password.getValue(), whose.signInName(), whose.name())
                    .map(say::it);
            password.setErrorMessage(against.orElse(""));
            password.setInvalid(against.isPresent());
            if (against.isPresent()) return;
            people.setPassword(signedIn.person(), whose.id(), password.getValue());
            close();
        });
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }
}
