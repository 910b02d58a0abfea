package drylap.ui.shell;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.security.FirstUse;
import drylap.speech.Speech;
import drylap.ui.components.ThemeSwitch;
import org.springframework.beans.factory.annotation.Autowired;

/** The first screen of an empty database: whoever can read what the process prints makes the first account. */
@Route(value = "first-use", autoLayout = false)
@AnonymousAllowed
@CssImport("./theme.css")
@CssImport("./page.css")
@CssImport("./sign-in.css")
class FirstUseView extends Div implements BeforeEnterObserver, Spoken {
    private final transient FirstUse first;
    private final transient Speech say;
    private final TextField code = new TextField();
    private final TextField name = new TextField();
    private final TextField signInName = new TextField();
    private final NewPassword password;
    private final Checkbox alone = new Checkbox(true);
    private final TroubleLine trouble = new TroubleLine();

    @Autowired
    FirstUseView(FirstUse first) {
        this(first, SignInView.atTheDoor());
    }

    FirstUseView(FirstUse first, Speech say) {
        this.first = first;
        this.say = say;
        addClassNames("shell", "sign-in");
        password =
                new NewPassword(say, say.it("Password"), () -> new String[] {signInName.getValue(), name.getValue()});
        label();
        signInName.setAutocomplete(com.vaadin.flow.component.textfield.Autocomplete.USERNAME);
        code.setAutofocus(true);
        add(sheet(), new ThemeSwitch());
    }

    private void label() {
        code.setLabel(say.it("Code"));
        code.setHelperText(
                say.it("Printed in the window in which Drylap was started, or in its log, after \"First sign-in\"."));
        name.setLabel(say.it("Your name"));
        signInName.setLabel(say.it("Name to sign in with"));
        signInName.setHelperText(say.it("2 to 80 letters, digits, dots, hyphens, _ or @"));
        alone.setLabel(say.it("I plan the work too, not only manage people"));
    }

    private Div sheet() {
        var brand = new Div(Icons.MARK.svg(), new Span("Drylap"));
        brand.addClassName("brand");
        var make = new Button(say.it("Make the first account"), _ -> make());
        make.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        make.addClickShortcut(Key.ENTER);
        var fields = new Div(code, name, signInName, password, alone, make);
        fields.addClassName("asked");
        var sheet = new Div(
                brand,
                new H1(say.it("Nobody can sign in yet")),
                new Paragraph(say.it(
                        "This database is empty. Make the first account; the code shows that this is your Drylap.")),
                trouble,
                fields,
                new DoorLanguages(say));
        sheet.addClassName("sheet");
        return sheet;
    }

    @Override
    public String called() {
        return say.it("First use");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (!first.open()) event.forwardTo(SignInView.class);
    }

    private void make() {
        switch (first.make(
                code.getValue(), name.getValue(), signInName.getValue(), password.value(), alone.getValue())) {
            case FirstUse.Outcome.Made _ -> leave();
            case FirstUse.Outcome.NotFirst _ -> leave();
            case FirstUse.Outcome.Refused(var why) -> trouble.say(say.it(why));
        }
    }

    private void leave() {
        // a page of its own, since its form carries the token of its session
        getUI().ifPresent(ui -> ui.getPage().setLocation(SignInView.ROUTE));
    }
}
