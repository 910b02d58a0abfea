package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.TroubleLine;
import drylap.whatif.Scenario;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Asks for one change and the scenario that it belongs to. */
final class ChangeForm extends Div {
    private static final int LONGEST_NAME = 40;

    /** What may be otherwise. */
    enum Kind {
        ADD_CREW("One more crew", CrewFields.More::new),
        DROP_DAY("A day without a crew", CrewFields.LostDay::new),
        DELAY("A later delivery", DeliveryFields::new),
        RAIN("Rain in some hours", () -> new RainFields.Hours(true)),
        NO_RAIN("No rain in some hours", () -> new RainFields.Hours(false)),
        PERCENT("More or less rain", RainFields.Percent::new);

        private final String words;
        private final Supplier<ChangeFields> fields;

        Kind(String words, Supplier<ChangeFields> fields) {
            this.words = words;
            this.fields = fields;
        }

        String words() {
            return words;
        }
    }

    private final transient WhatIfDesk desk;
    private final transient Runnable after;
    private final TextField scenario = new TextField("Scenario");
    private final Select<Kind> kind = ChangeFields.select("What would be otherwise");
    private final Map<Kind, ChangeFields> fields = new EnumMap<>(Kind.class);
    private final Div asked = new Div();
    private final TroubleLine trouble = new TroubleLine();
    private transient @Nullable FolderShown shown;

    ChangeForm(WhatIfDesk desk, Runnable after) {
        this.desk = desk;
        this.after = after;
        addClassName("change-form");
        scenario.setHelperText("the same name again adds to it");
        scenario.setMaxLength(LONGEST_NAME);
        scenario.setValue("Scenario 1");
        for (Kind one : Kind.values()) fields.put(one, one.fields.get());
        kind.setItems(Kind.values());
        kind.setItemLabelGenerator(Kind::words);
        kind.addValueChangeListener(_ -> ask());
        kind.setValue(Kind.ADD_CREW);
        var first = new Div(scenario, kind);
        first.addClassName("asked");
        add(first, asked, trouble, new Button("Add the change", _ -> take()));
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
            say(desk.add(now, name, asking.read(now)));
        } catch (WrongField wrong) {
            say(Optional.of(wrong.words()));
        }
    }

    private String name() throws WrongField {
        String accepted = "a name of up to %d characters, other than \"%s\"".formatted(LONGEST_NAME, Scenario.AS_IT_IS);
        String name = ChangeFields.text(scenario, LONGEST_NAME, accepted);
        if (name.equals(Scenario.AS_IT_IS))
            throw new WrongField(scenario.getLabel(), "that is the job without a change", accepted);
        return name;
    }

    private void say(Optional<String> wrong) {
        wrong.ifPresentOrElse(trouble::say, trouble::clear);
        if (wrong.isEmpty()) after.run();
    }
}
