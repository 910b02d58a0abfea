package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignIns;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.shell.NewPassword;

/** Sets someone's password; all their sessions end, and they choose another one before anything else. */
final class PasswordDialog extends Dialog {
    PasswordDialog(People people, SignedIn signedIn, Person whose) {
        var say = new Speech(signedIn.reading());
        setHeaderTitle(say.it("Password of {0}", whose.name()));
        var password =
                new NewPassword(say, say.it("New password"), () -> new String[] {whose.signInName(), whose.name()});
        var fields = new Div(new Paragraph(say.it("All sessions of this person end.")), password);
        fields.addClassName("fields");
        if (!whose.id().equals(signedIn.person().id())) fields.add(given(say));
        add(fields);
        var save = new Button(say.it("Set the password"), _ -> {
            if (!password.isTaken()) return;
            try {
                people.setPassword(signedIn.person(), whose.id(), password.value());
                close();
            } catch (IllegalArgumentException refused) {
                password.refuse(Unfit.saying(refused));
            }
        });
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }

    /** What becomes of a password that is set for somebody else. */
    static Paragraph given(Speech say) {
        return new Paragraph(say.it(
                "It lets the person in for {0} days, to choose one of their own; nothing else opens to them before.",
                SignIns.GIVEN_DAYS));
    }
}
