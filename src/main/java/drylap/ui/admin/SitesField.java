package drylap.ui.admin;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.speech.Speech;
import java.util.List;

/** Every site of a person, or some. */
final class SitesField extends Div {
    private final Checkbox every = new Checkbox(true);
    private final CheckboxGroup<SiteId> some = new CheckboxGroup<>();

    SitesField(Speech say, List<SiteId> known) {
        every.setLabel(say.it("Every site of the person"));
        some.setLabel(say.it("Sites"));
        some.setItems(known);
        some.setVisible(false);
        every.addValueChangeListener(event -> some.setVisible(!event.getValue()));
        addClassName("some-sites");
        add(every, some);
    }

    Reach reach() {
        return every.getValue() ? Reach.EVERYWHERE : Reach.of(some.getValue());
    }
}
