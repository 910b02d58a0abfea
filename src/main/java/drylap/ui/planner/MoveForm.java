package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.timepicker.TimePicker;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Task;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Asks for a crew, a day and a start, and tells of every change at once. */
final class MoveForm extends Div {
    private static final Duration STEP = Duration.ofMinutes(5);

    private final Select<Crew> crew = new Select<>();
    private final Select<LocalDate> day = new Select<>();
    private final TimePicker start = new TimePicker();
    private boolean filling;

    MoveForm(Speech say, FolderShown shown, Task task, Runnable changed) {
        addClassName("fields");
        crew.setLabel(say.it("Crew"));
        crew.setItems(shown.folder().crews().stream()
                .sorted(Comparator.comparing((Crew one) -> one.trade() != task.trade())
                        .thenComparing(Crew::id))
                .toList());
        crew.setItemLabelGenerator(one -> "%s, %s".formatted(one.id(), say.it(Words.crewOf(one.trade()))));
        day.setLabel(say.it("Day"));
        day.setItems(days(shown));
        day.setItemLabelGenerator(say::day);
        start.setLabel(say.it("Start"));
        start.setStep(STEP);
        start.setLocale(Locale.UK);
        start.setHelperText(say.it("by the crew's clock"));
        crew.addValueChangeListener(_ -> tell(changed));
        day.addValueChangeListener(_ -> tell(changed));
        start.addValueChangeListener(_ -> tell(changed));
        add(crew, day, start);
    }

    private static List<LocalDate> days(FolderShown shown) {
        return shown.folder().shifts().stream()
                .map(Shift::date)
                .distinct()
                .sorted()
                .toList();
    }

    private void tell(Runnable changed) {
        if (!filling) changed.run();
    }

    void fill(FolderShown shown, VisitPlace place) {
        filling = true;
        shown.folder().crews().stream()
                .filter(one -> one.id().equals(place.crew()))
                .findFirst()
                .ifPresent(crew::setValue);
        if (days(shown).contains(place.date())) day.setValue(place.date());
        start.setValue(place.time());
        filling = false;
    }

    /** Nothing while something is left open. */
    Optional<VisitPlace> place() {
        if (crew.isEmpty() || day.isEmpty() || start.isEmpty()) return Optional.empty();
        return Optional.of(new VisitPlace(crew.getValue().id(), day.getValue(), start.getValue()));
    }
}
