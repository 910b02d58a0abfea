package drylap.ui.planner;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import drylap.planning.CrewDays;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;

/** On which days a crew comes, and for which hours. */
final class DaysFields extends Div {
    private static final int WEEKS = 4;

    private final CheckboxGroup<DayOfWeek> weekdays = new CheckboxGroup<>();
    private final TextField start = new TextField();
    private final TextField end = new TextField();
    private final TextField breakStart = new TextField();
    private final TextField breakEnd = new TextField();
    private final TextField first = new TextField();
    private final TextField last = new TextField();

    DaysFields(Speech say, LocalDate today) {
        addClassName("asked");
        label(say);
        weekdays.setItems(DayOfWeek.values());
        weekdays.setItemLabelGenerator(
                day -> day.getDisplayName(TextStyle.SHORT, say.language().locale()));
        weekdays.setValue(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));
        weekdays.addClassName("wide");
        start.setValue("07:00");
        end.setValue("15:30");
        breakStart.setValue("12:00");
        breakEnd.setValue("12:30");
        first.setValue(today.toString());
        last.setValue(today.plusWeeks(WEEKS).toString());
        add(weekdays, start, end, breakStart, breakEnd, first, last);
    }

    private void label(Speech say) {
        weekdays.setLabel(say.it("Comes on"));
        start.setLabel(say.it("From"));
        end.setLabel(say.it("To"));
        breakStart.setLabel(say.it("Break from"));
        breakEnd.setLabel(say.it("Break to"));
        first.setLabel(say.it("First day"));
        last.setLabel(say.it("Last day"));
        breakEnd.setHelperText(say.it("both blank: no break"));
        end.setHelperText(say.it("in the crew's clock time; it is back by then"));
        last.setHelperText(say.it("such as {0}; more days can be given later", "2026-05-15"));
    }

    CrewDays read() throws WrongField {
        return new CrewDays(
                weekdays.getValue(),
                date(first),
                date(last),
                time(start),
                time(end),
                timeOrNone(breakStart),
                timeOrNone(breakEnd));
    }

    private static @Nullable LocalTime timeOrNone(TextField field) throws WrongField {
        return field.getValue().isBlank() ? null : time(field);
    }

    /** Forgiving: 7, 7:00, 07.00 and 0700 are all seven o'clock. */
    private static LocalTime time(TextField field) throws WrongField {
        String said = field.getValue().strip().replace('.', ':').replace('h', ':');
        var accepted = Saying.of("accepted: a time of day such as 07:00 or 15:30");
        try {
            if (said.matches("\\d{1,2}:?")) return LocalTime.of(Integer.parseInt(said.replace(":", "")), 0);
            if (said.matches("\\d{3,4}"))
                return LocalTime.of(Integer.parseInt(said) / 100, Integer.parseInt(said) % 100);
            if (said.matches("\\d{1,2}:\\d{2}")) return LocalTime.parse("0".repeat(5 - said.length()) + said);
        } catch (DateTimeException outside) {
            // told below
        }
        throw new WrongField(
                field.getLabel(),
                said.isEmpty() ? Saying.of("is blank") : Saying.of("''{0}'' is no time of day", said),
                accepted);
    }

    private static LocalDate date(TextField field) throws WrongField {
        String said = field.getValue().strip();
        try {
            return LocalDate.parse(said);
        } catch (DateTimeException notADate) {
            throw new WrongField(
                    field.getLabel(),
                    said.isEmpty() ? Saying.of("is blank") : Saying.of("''{0}'' is no date", said),
                    Saying.of("accepted: year, month and day, such as 2026-05-15"));
        }
    }
}
