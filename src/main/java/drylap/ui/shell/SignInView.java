package drylap.ui.shell;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinServletRequest;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.kernel.Reading;
import drylap.security.FirstUse;
import drylap.security.People;
import drylap.security.SignIns;
import drylap.speech.Speech;
import drylap.ui.components.ThemeSwitch;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.authentication.CredentialsExpiredException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.web.WebAttributes;
import org.springframework.security.web.csrf.CsrfToken;

/** Where everybody comes in; a plain form, so that browsers and their password stores know it. */
@Route(value = SignInView.ROUTE, autoLayout = false)
@AnonymousAllowed
@CssImport("./theme.css")
@CssImport("./page.css")
@CssImport("./sign-in.css")
class SignInView extends Div implements BeforeEnterObserver, Spoken {
    static final String ROUTE = "sign-in";

    private final TroubleLine trouble = new TroubleLine();
    private final transient FirstUse first;
    private final transient Speech say;

    @Autowired
    SignInView(People people, FirstUse first) {
        this(people, first, atTheDoor());
    }

    SignInView(People people, FirstUse first, Speech say) {
        this.first = first;
        this.say = say;
        addClassNames("shell", "sign-in");
        var brand = new Div(Icons.MARK.svg(), new Span("Drylap"));
        brand.addClassName("brand");
        var sheet = new Div(brand, new H1(say.it("Sign in")), trouble);
        sheet.addClassName("sheet");
        sheet.getElement().appendChild(form());
        sheet.add(new DoorLanguages(say));
        add(sheet);
        var sample = people.demo();
        if (!sample.isEmpty()) add(new SamplePeople(sample, say));
        add(new ThemeSwitch());
    }

    @Override
    public String called() {
        return say.it("Sign in");
    }

    private Element form() {
        var form = new Element("form");
        form.setAttribute("method", "post").setAttribute("action", ROUTE);
        field(form, say.it("Name"), "username", "text", "username");
        field(form, say.it("Password"), "password", "password", "current-password");
        var token = csrf();
        if (token != null) {
            var hidden = new Input();
            hidden.setType("hidden");
            hidden.getElement().setAttribute("name", token.getParameterName());
            hidden.setValue(token.getToken());
            form.appendChild(hidden.getElement());
        }
        var enter = new NativeButton(say.it("Sign in"));
        enter.getElement().setAttribute("type", "submit");
        form.appendChild(enter.getElement());
        return form;
    }

    private static void field(Element form, String words, String name, String type, String autocomplete) {
        var label = new NativeLabel(words);
        label.setFor(name);
        var input = new Input();
        input.setId(name);
        input.setType(type);
        input.getElement()
                .setAttribute("name", name)
                .setAttribute("autocomplete", autocomplete)
                .setAttribute("required", true);
        if (type.equals("text"))
            input.getElement().setAttribute("autocapitalize", "none").setAttribute("autofocus", true);
        form.appendChild(label.getElement(), input.getElement());
    }

    private static @Nullable CsrfToken csrf() {
        var request = request();
        return request == null ? null : (CsrfToken) request.getAttribute(CsrfToken.class.getName());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (first.open()) {
            event.forwardTo(FirstUseView.class);
            return;
        }
        if (!event.getLocation().getQueryParameters().getParameters().containsKey("error")) return;
        trouble.say(refused());
    }

    private String refused() {
        var request = request();
        Object why = request == null ? null : request.getSession().getAttribute(WebAttributes.AUTHENTICATION_EXCEPTION);
        return switch (why) {
            case LockedException _ -> say.it("Too many tries. Wait a quarter of an hour, then try again.");
            case CredentialsExpiredException _ -> ranOut(say);
            case null, default -> say.it("Name or password is wrong. Passwords tell capital letters from small ones.");
        };
    }

    static String ranOut(Speech say) {
        return say.it(
                "Somebody else set this password more than {0} days ago, and it has run out. Ask whoever manages people for another one.",
                SignIns.GIVEN_DAYS);
    }

    private static @Nullable HttpServletRequest request() {
        var request = VaadinServletRequest.getCurrent();
        return request == null ? null : request.getHttpServletRequest();
    }

    /** In the language of whoever is not signed in. */
    static Speech atTheDoor() {
        return new Speech(Reading.USUAL.in(DoorLanguage.of(request())));
    }
}
