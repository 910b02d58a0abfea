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
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.security.FirstUse;
import drylap.security.Passwords;
import drylap.ui.components.ThemeSwitch;

/** The first screen of an empty database: whoever can read what the process prints makes the first account. */
@Route(value = "first-use", autoLayout = false)
@PageTitle("First use · Drylap")
@AnonymousAllowed
@CssImport("./theme.css")
@CssImport("./page.css")
@CssImport("./sign-in.css")
class FirstUseView extends Div implements BeforeEnterObserver {
    private final transient FirstUse first;
    private final TextField code = new TextField("Code");
    private final TextField name = new TextField("Your name");
    private final TextField signInName = new TextField("Name to sign in with");
    private final PasswordField password = new PasswordField("Password");
    private final Checkbox alone = new Checkbox("I plan the work too, not only manage people", true);
    private final TroubleLine trouble = new TroubleLine();

    FirstUseView(FirstUse first) {
        this.first = first;
        addClassNames("shell", "sign-in");
        // in English only, whatever the browser asks for
        getElement().setAttribute("lang", "en");
        var brand = new Div(Icons.MARK.svg(), new Span("Drylap"));
        brand.addClassName("brand");
        code.setHelperText(
                "Printed in the window in which Drylap was started, or in its log, after \"First sign-in\".");
        signInName.setHelperText("2 to 80 letters, digits, dots, hyphens, _ or @");
        signInName.setAutocomplete(com.vaadin.flow.component.textfield.Autocomplete.USERNAME);
        password.setAutocomplete(com.vaadin.flow.component.textfield.Autocomplete.NEW_PASSWORD);
        password.setHelperText("%d characters or more".formatted(Passwords.SHORTEST));
        code.setAutofocus(true);
        var make = new Button("Make the first account", _ -> make());
        make.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        make.addClickShortcut(Key.ENTER);
        var fields = new Div(code, name, signInName, password, alone, make);
        fields.addClassName("asked");
        var sheet = new Div(
                brand,
                new H1("Nobody can sign in yet"),
                new Paragraph(
                        "This database is empty. Make the first account; the code shows that this is your Drylap."),
                trouble,
                fields);
        sheet.addClassName("sheet");
        add(sheet, new ThemeSwitch());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (!first.open()) event.forwardTo(SignInView.class);
    }

    private void make() {
        switch (first.make(
                code.getValue(), name.getValue(), signInName.getValue(), password.getValue(), alone.getValue())) {
            case FirstUse.Outcome.Made _ -> leave();
            case FirstUse.Outcome.NotFirst _ -> leave();
            case FirstUse.Outcome.Refused(var why) -> trouble.say(why);
        }
    }

    private void leave() {
        // a page of its own, since its form carries the token of its session
        getUI().ifPresent(ui -> ui.getPage().setLocation(SignInView.ROUTE));
    }
}
