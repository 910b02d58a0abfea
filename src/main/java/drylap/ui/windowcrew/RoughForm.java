package drylap.ui.windowcrew;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import drylap.roughopening.RoughOpenings;
import drylap.roughopening.RoughPlace;
import drylap.roughopening.RoughResult;
import drylap.roughopening.RoughSizes;
import drylap.ui.shell.TroubleLine;
import drylap.windowschedule.LengthReading;
import drylap.windowschedule.LengthUnit;
import drylap.windowschedule.Lengths;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Asks for all sizes of a rough opening; nothing is sent until each can be read. */
final class RoughForm extends Div {
    /** Sends what was read. */
    interface Sender {
        RoughResult send(RoughSizes sizes, String note);
    }

    private final transient Sender sender;
    private final Select<LengthUnit> unit = new Select<>();
    private final transient Map<RoughPlace, TextField> fields = new EnumMap<>(RoughPlace.class);
    private final TextArea note = new TextArea("Note");
    private final TroubleLine trouble = new TroubleLine();

    RoughForm(Sender sender) {
        this.sender = sender;
        addClassName("rough-form");
        unit.setLabel("Numbers without a unit are");
        unit.setItems(LengthUnit.INCH, LengthUnit.MILLIMETRE);
        unit.setItemLabelGenerator(LengthUnit::words);
        unit.setValue(LengthUnit.INCH);
        note.setMaxLength(RoughOpenings.LONGEST_NOTE);
        add(new Paragraph("As the tape reads: 36 1/2, 3'-0 1/2\" or 927 mm."), unit);
        group("Widths, jamb to jamb", RoughPlace.WIDTH_SILL, RoughPlace.WIDTH_MIDDLE, RoughPlace.WIDTH_HEAD);
        group("Heights, sill to head", RoughPlace.HEIGHT_LEFT, RoughPlace.HEIGHT_MIDDLE, RoughPlace.HEIGHT_RIGHT);
        group("Diagonals", RoughPlace.DIAGONAL_RISING, RoughPlace.DIAGONAL_FALLING);
        group(
                "Plumb and level; 0 where nothing is off",
                RoughPlace.PLUMB_LEFT,
                RoughPlace.PLUMB_RIGHT,
                RoughPlace.LEVEL_SILL);
        var save = new Button("Record it", _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        add(note, trouble, save);
    }

    private void group(String title, RoughPlace... places) {
        var group = new Div();
        group.addClassName("group");
        for (RoughPlace place : places) {
            var field = new TextField(place.words());
            field.setManualValidation(true);
            fields.put(place, field);
            group.add(field);
        }
        add(new H3(title), group);
    }

    private void save() {
        trouble.clear();
        Map<RoughPlace, BigDecimal> sizes = new EnumMap<>(RoughPlace.class);
        fields.forEach((place, field) -> read(place, field).ifPresent(size -> sizes.put(place, size)));
        if (sizes.size() < fields.size()) {
            trouble.say("Nothing was recorded yet: put right what is marked.");
            return;
        }
        if (sender.send(new RoughSizes(sizes), note.getValue().strip()) instanceof RoughResult.Refused(var why))
            trouble.say(why + " Nothing was recorded.");
    }

    private Optional<BigDecimal> read(RoughPlace place, TextField field) {
        String wrong = "";
        BigDecimal size = BigDecimal.ZERO;
        switch (Lengths.read(field.getValue(), unit.getValue())) {
            case LengthReading.Read(var millimetres) -> size = millimetres;
            case LengthReading.Wrong(var why) -> wrong = why + "; accepted is " + Lengths.ACCEPTED;
            case LengthReading.NoUnit _ -> wrong = "has no unit; accepted is " + Lengths.ACCEPTED;
        }
        boolean within = size.compareTo(BigDecimal.valueOf(place.leastMm())) >= 0
                && size.compareTo(BigDecimal.valueOf(place.mostMm())) <= 0;
        if (wrong.isEmpty() && !within) wrong = "accepted is %d to %d mm".formatted(place.leastMm(), place.mostMm());
        field.setInvalid(!wrong.isEmpty());
        field.setErrorMessage(wrong);
        return wrong.isEmpty() ? Optional.of(size) : Optional.empty();
    }
}
