package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import drylap.speech.Speech;
import drylap.windowschedule.Choices;
import drylap.windowschedule.ScheduleSaid;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;

/** Which level each storey is, where a schedule names them and does not number them. */
final class StoreyFields extends Div {
    private final transient Speech say;
    private final transient Consumer<Map<String, Integer>> change;
    private transient Map<String, Integer> levels = Map.of();
    private transient Set<String> asked = Set.of();

    StoreyFields(Speech say, Consumer<Map<String, Integer>> change) {
        this.say = say;
        this.change = change;
        addClassName("asked");
    }

    /** Another file: its storeys are asked for anew. */
    void begin() {
        asked = Set.of();
    }

    /** @param storeys with the level that each says by itself */
    void show(Map<String, Integer> chosen, SortedMap<String, OptionalInt> storeys) {
        levels = chosen;
        if (storeys.keySet().equals(asked)) return;
        asked = Set.copyOf(storeys.keySet());
        removeAll();
        storeys.forEach((name, own) -> add(field(name, own)));
    }

    private TextField field(String storey, OptionalInt own) {
        var field = new TextField(say.it("Storey {0} is level", ScheduleSaid.read(storey)));
        String accepted = say.it("a whole number from {0} to {1}", 1, Choices.HIGHEST_LEVEL);
        Integer chosen = levels.get(storey);
        field.setValue(chosen != null ? chosen.toString() : own.isPresent() ? String.valueOf(own.getAsInt()) : "");
        field.setHelperText(accepted);
        field.setErrorMessage(say.it("accepted is {0}", accepted));
        field.addValueChangeListener(event -> {
            OptionalInt level = Choices.level(event.getValue());
            field.setInvalid(level.isEmpty() && !event.getValue().isBlank());
            if (event.isFromClient()) tell(storey, level);
        });
        return field;
    }

    private void tell(String storey, OptionalInt level) {
        Map<String, Integer> now = new HashMap<>(levels);
        now.remove(storey);
        level.ifPresent(number -> now.put(storey, number));
        change.accept(now);
    }
}
