package drylap.ui.admin;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import java.util.List;

/** Every site of a person, or some. */
final class SitesField extends Div {
    private final Checkbox every = new Checkbox("Every site of the person", true);
    private final CheckboxGroup<SiteId> some = new CheckboxGroup<>("Sites");

    SitesField(List<SiteId> known) {
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
