package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignIns;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;

/** Where somebody chooses a password of their own, showing the one that they have; all their sessions end. */
final class OwnPassword extends Div {
    private final transient People people;
    private final transient SignIns signIns;
    private final transient SignedIn signedIn;
    private final transient AuthenticationContext door;
    private final transient Speech say;
    private final PasswordField old = new PasswordField();
    private final NewPassword fresh;

    OwnPassword(People people, SignIns signIns, SignedIn signedIn, AuthenticationContext door) {
        this.people = people;
        this.signIns = signIns;
        this.signedIn = signedIn;
        this.door = door;
        var who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("own-password");
        old.setLabel(say.it("Password now"));
        old.setAutocomplete(Autocomplete.CURRENT_PASSWORD);
        fresh = new NewPassword(say, say.it("New password"), () -> new String[] {who.signInName(), who.name()});
        add(old, fresh, new Button(say.it("Set the password"), _ -> set()));
    }

    private void set() {
        Person who = signedIn.person();
        if (!fresh.isTaken() || !isTheirs(who)) return;
        try {
            people.setPassword(who, who.id(), fresh.value());
        } catch (IllegalArgumentException refused) {
            fresh.refuse(Unfit.saying(refused));
            return;
        }
        Notification.show(say.it("The password is set. Sign in with it."));
        door.logout();
    }

    private boolean isTheirs(Person who) {
        var outcome = signIns.confirm(who.id(), old.getValue());
        old.setErrorMessage(
                switch (outcome) {
                    case SignIns.Outcome.In _ -> "";
                    case SignIns.Outcome.Wait _ -> say.it("Too many tries. Wait a quarter of an hour, then try again.");
                    case SignIns.Outcome.RanOut _ -> SignInView.ranOut(say);
                    case SignIns.Outcome.WrongNameOrPassword _ -> say.it("This is not the password.");
                });
        old.setInvalid(!(outcome instanceof SignIns.Outcome.In));
        return !old.isInvalid();
    }
}
