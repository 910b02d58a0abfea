package drylap.ui.planner;

import com.vaadin.flow.component.textfield.TextField;
import drylap.crews.Crew;
import drylap.speech.Speech;
import org.jspecify.annotations.Nullable;

/** How many people a crew has; blank where that is not told. */
final class PeopleField extends TextField {
    PeopleField(Speech say) {
        super(say.it("How many people, not needed"));
        setHelperText(say.it("for those who read the sheets; no minute of work changes by it"));
    }

    void show(@Nullable Integer people) {
        setValue(people == null ? "" : people.toString());
    }

    @Nullable
    Integer read() throws WrongField {
        return getValue().isBlank() ? null : ChangeFields.whole(this, Crew.FEWEST_PEOPLE, Crew.MOST_PEOPLE);
    }
}
