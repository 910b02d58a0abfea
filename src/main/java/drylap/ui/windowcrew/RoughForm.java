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
import drylap.speech.Saying;
import drylap.speech.Speech;
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

    private final transient Speech say;
    private final transient Sender sender;
    private final Select<LengthUnit> unit = new Select<>();
    private final transient Map<RoughPlace, TextField> fields = new EnumMap<>(RoughPlace.class);
    private final TextArea note = new TextArea();
    private final TroubleLine trouble = new TroubleLine();

    RoughForm(Speech say, Sender sender) {
        this.say = say;
        this.sender = sender;
        addClassName("rough-form");
        unit.setLabel(say.it("Numbers without a unit are"));
        unit.setItems(LengthUnit.INCH, LengthUnit.MILLIMETRE);
        unit.setItemLabelGenerator(one -> say.it(one == LengthUnit.INCH ? "inches" : "millimetres"));
        unit.setValue(LengthUnit.INCH);
        note.setLabel(say.it("Note"));
        note.setMaxLength(RoughOpenings.LONGEST_NOTE);
        add(new Paragraph(say.it("As the tape reads: 36 1/2, 3'-0 1/2\" or 927 mm.")), unit);
        group(say.it("Widths, jamb to jamb"), RoughPlace.WIDTH_SILL, RoughPlace.WIDTH_MIDDLE, RoughPlace.WIDTH_HEAD);
        group(
                say.it("Heights, sill to head"),
                RoughPlace.HEIGHT_LEFT,
                RoughPlace.HEIGHT_MIDDLE,
                RoughPlace.HEIGHT_RIGHT);
        group(say.it("Diagonals"), RoughPlace.DIAGONAL_RISING, RoughPlace.DIAGONAL_FALLING);
        group(
                say.it("Plumb and level; 0 where nothing is off"),
                RoughPlace.PLUMB_LEFT,
                RoughPlace.PLUMB_RIGHT,
                RoughPlace.LEVEL_SILL);
        var save = new Button(say.it("Record these sizes"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        add(note, trouble, save);
    }

    private void group(String title, RoughPlace... places) {
        var group = new Div();
        group.addClassName("group");
        for (RoughPlace place : places) {
            var field = new TextField(say.it(place.words()));
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
            trouble.say(say.it("Nothing was recorded yet: put right what is marked."));
            return;
        }
        if (sender.send(new RoughSizes(sizes), note.getValue().strip()) instanceof RoughResult.Refused(var why))
            trouble.say(say.it("{0} Nothing was recorded.", why));
    }

    private Optional<BigDecimal> read(RoughPlace place, TextField field) {
        String wrong = "";
        BigDecimal size = BigDecimal.ZERO;
        switch (Lengths.read(field.getValue(), unit.getValue())) {
            case LengthReading.Read(var millimetres) -> size = millimetres;
            case LengthReading.Wrong(var why) ->
                wrong = say.it("{0}; accepted is {1}", Saying.of(why), Saying.of(Lengths.ACCEPTED));
            case LengthReading.NoUnit _ ->
                wrong = say.it("{0}; accepted is {1}", Saying.of("has no unit"), Saying.of(Lengths.ACCEPTED));
        }
        boolean within = size.compareTo(BigDecimal.valueOf(place.leastMm())) >= 0
                && size.compareTo(BigDecimal.valueOf(place.mostMm())) <= 0;
        if (wrong.isEmpty() && !within) wrong = say.it("accepted is {0} to {1} mm", place.leastMm(), place.mostMm());
        field.setInvalid(!wrong.isEmpty());
        field.setErrorMessage(wrong);
        return wrong.isEmpty() ? Optional.of(size) : Optional.empty();
    }
}
