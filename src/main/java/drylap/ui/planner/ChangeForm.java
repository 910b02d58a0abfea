package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.TroubleLine;
import drylap.whatif.Scenario;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Asks for one change and the scenario that it belongs to. */
final class ChangeForm extends Div {
    private static final int LONGEST_NAME = 40;

    /** What may be otherwise. */
    enum Kind {
        ADD_CREW("One more crew", CrewFields.More::new),
        DROP_DAY("A day without a crew", CrewFields.LostDay::new),
        DELAY("A later delivery", DeliveryFields::new),
        RAIN("Rain in some hours", say -> new RainFields.Hours(say, true)),
        NO_RAIN("No rain in some hours", say -> new RainFields.Hours(say, false)),
        PERCENT("More or less rain", RainFields.Percent::new);

        private final String words;
        private final Function<Speech, ChangeFields> fields;

        Kind(String words, Function<Speech, ChangeFields> fields) {
            this.words = words;
            this.fields = fields;
        }

        String words() {
            return words;
        }
    }

    private final transient Speech say;
    private final transient WhatIfDesk desk;
    private final transient Runnable after;
    private final TextField scenario = new TextField();
    private final Select<Kind> kind;
    private final Map<Kind, ChangeFields> fields = new EnumMap<>(Kind.class);
    private final Div asked = new Div();
    private final TroubleLine trouble = new TroubleLine();
    private transient @Nullable FolderShown shown;

    ChangeForm(Speech say, WhatIfDesk desk, Runnable after) {
        this.say = say;
        this.desk = desk;
        this.after = after;
        addClassName("change-form");
        scenario.setLabel(say.it("Scenario"));
        scenario.setHelperText(say.it("the same name again adds to it"));
        scenario.setMaxLength(LONGEST_NAME);
        scenario.setValue(say.it("Scenario {0}", 1));
        for (Kind one : Kind.values()) fields.put(one, one.fields.apply(say));
        kind = ChangeFields.select(say.it("What would be otherwise"));
        kind.setItems(Kind.values());
        kind.setItemLabelGenerator(one -> say.it(one.words()));
        kind.addValueChangeListener(_ -> ask());
        kind.setValue(Kind.ADD_CREW);
        var first = new Div(scenario, kind);
        first.addClassName("asked");
        add(first, asked, trouble, new Button(say.it("Add the change"), _ -> take()));
    }

    void show(FolderShown now) {
        shown = now;
        fields.values().forEach(one -> one.offer(now));
    }

    private void ask() {
        asked.removeAll();
        Optional.ofNullable(fields.get(kind.getValue())).ifPresent(asked::add);
        trouble.clear();
    }

    private void take() {
        FolderShown now = shown;
        ChangeFields asking = fields.get(kind.getValue());
        if (now == null || asking == null) return;
        try {
            String name = name();
            tell(desk.add(now, name, asking.read(now)).map(say::it));
        } catch (WrongField wrong) {
            tell(Optional.of(say.it(wrong.said())));
        }
    }

    private String name() throws WrongField {
        String asItIs = say.it(Scenario.AS_IT_IS);
        Saying accepted = Saying.of("a name of up to {0} characters, other than \"{1}\"", LONGEST_NAME, asItIs);
        String name = ChangeFields.text(scenario, LONGEST_NAME, accepted);
        if (name.equals(asItIs) || name.equals(Scenario.AS_IT_IS))
            throw new WrongField(scenario.getLabel(), Saying.of("that is the job without a change"), accepted);
        return name;
    }

    private void tell(Optional<String> wrong) {
        wrong.ifPresentOrElse(trouble::say, trouble::clear);
        if (wrong.isEmpty()) after.run();
    }
}
