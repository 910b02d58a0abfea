package drylap.ui.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.data.value.ValueChangeMode;
import drylap.security.Judged;
import drylap.security.Passwords;
import drylap.security.Strength;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.Locale;
import java.util.function.Supplier;

/** Where a new password is typed, and how hard it is to guess: in words, which are read out, and as a bar, a moment after each pause. */
public final class NewPassword extends Div {
    private static final int PAUSE_MS = 400;

    private final transient Speech say;
    private final transient Supplier<String[]> names;
    private final PasswordField field = new PasswordField();
    private final Div bar = new Div();
    private final Span strength = new Span();
    private final Span why = new Span();

    /** @param names of the person whose password it is, as far as they are known by then */
    public NewPassword(Speech say, String label, Supplier<String[]> names) {
        this.say = say;
        this.names = names;
        addClassName("new-password");
        field.setLabel(label);
        field.setHelperText(say.it("{0} characters or more", Passwords.SHORTEST));
        field.setAutocomplete(Autocomplete.NEW_PASSWORD);
        field.setValueChangeMode(ValueChangeMode.LAZY);
        field.setValueChangeTimeout(PAUSE_MS);
        field.addValueChangeListener(_ -> show());
        bar.addClassName("strength");
        bar.setVisible(false);
        var told = new Div(strength, why);
        told.addClassName("told");
        told.getElement().setAttribute("role", "status");
        add(field, bar, told);
    }

    public String value() {
        return field.getValue();
    }

    /** Whether it is taken; if it is not, the field says why. */
    public boolean isTaken() {
        var against = judged().against();
        against.ifPresent(this::refuse);
        if (against.isEmpty()) field.setInvalid(false);
        return against.isEmpty();
    }

    public void refuse(Saying because) {
        field.setErrorMessage(say.it(because));
        field.setInvalid(true);
    }

    private Judged judged() {
        return Passwords.judge(value(), names.get());
    }

    private void show() {
        bar.setVisible(!value().isEmpty());
        if (value().isEmpty()) {
            strength.setText("");
            why.setText("");
            return;
        }
        var judged = judged();
        // what was said when they tried to save speaks of another password
        field.setInvalid(false);
        strength.setText(say.it(judged.strength().words()));
        // how long it must be stands beside the field already
        boolean more = judged.strength() != Strength.TOO_SHORT;
        why.setText(more ? judged.against().map(say::it).orElse("") : "");
        draw(judged.strength());
    }

    private void draw(Strength how) {
        bar.removeAll();
        for (int part = 1; part <= Strength.PARTS; part++) {
            var one = new Span();
            if (part <= how.parts()) one.addClassName("filled");
            bar.add(one);
        }
        bar.getElement()
                .setAttribute("role", "meter")
                .setAttribute("aria-label", say.it("How hard the password is to guess"))
                .setAttribute("aria-valuemin", "0")
                .setAttribute("aria-valuemax", String.valueOf(Strength.PARTS))
                .setAttribute("aria-valuenow", String.valueOf(how.parts()))
                .setAttribute("aria-valuetext", say.it(how.words()))
                .setAttribute("data-strength", how.name().toLowerCase(Locale.ROOT));
    }
}
