package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoiceResult;
import drylap.forecasts.ForecastSource;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.shell.TroubleLine;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Chooses where one site's forecast comes from. */
final class ForecastDialog extends Dialog {
    private static final String OWN = "the job folder's own";

    /** A source, or none. */
    private record Way(Optional<ForecastSource> source, String name) {
        static Way of(Speech say, @Nullable ForecastSource source) {
            return new Way(Optional.ofNullable(source), say.it(source == null ? OWN : source.words()));
        }
    }

    private final transient ForecastDesk desk;
    private final transient Person who;
    private final transient Runnable after;
    private final transient Speech say;
    private final Select<Way> source = new Select<>();
    private final TextField cell = new TextField();
    private final IntegerField every = new IntegerField();
    private final TroubleLine trouble = new TroubleLine();
    private transient ForecastChoice seen;

    ForecastDialog(ForecastDesk desk, Person who, ForecastChoice seen, String name, Runnable after) {
        this.desk = desk;
        this.who = who;
        this.seen = seen;
        this.after = after;
        say = new Speech(who.reading());
        setHeaderTitle(say.it("Forecast of {0}", name));
        source.setLabel(say.it("Source"));
        cell.setLabel(say.it("Grid cell"));
        every.setLabel(say.it("Fetched every (hours)"));
        source.setItemLabelGenerator(Way::name);
        source.setItems(Stream.concat(
                        Stream.of(Way.of(say, null)),
                        Arrays.stream(ForecastSource.values())
                                .filter(one -> one.fetched() || one == seen.source())
                                .map(one -> Way.of(say, one)))
                .toList());
        source.addValueChangeListener(event ->
                cell.setVisible(event.getValue().source().equals(Optional.of(ForecastSource.US_WEATHER_SERVICE))));
        source.setValue(Way.of(say, seen.source()));
        cell.setVisible(seen.source() == ForecastSource.US_WEATHER_SERVICE);
        cell.setHelperText(say.it("blank: asked for by the site's place; else such as {0}", "SEW/125,68"));
        if (seen.cell() != null) cell.setValue(seen.cell());
        every.setValue(seen.everyHours());
        every.setStepButtonsVisible(true);
        var fields = new Div(source, cell, every);
        fields.addClassName("fields");
        add(
                new Paragraph(say.it(
                        "From the next plan on. The address is asked from this machine, with the site's place.")),
                fields,
                trouble);
        var save = new Button(say.it("Save"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }

    private void save() {
        Integer hours = every.getValue();
        var wanted = new ForecastChoice(
                seen.site(),
                source.getValue().source().orElse(null),
                cell.isVisible() && !cell.getValue().isBlank() ? cell.getValue().strip() : null,
                hours == null ? 0 : hours,
                seen.version(),
                "",
                null);
        switch (desk.choose(who, wanted)) {
            case ForecastChoiceResult.Chosen _ -> done();
            case ForecastChoiceResult.Refused(var why) -> trouble.say(say.it(why));
            case ForecastChoiceResult.ChangedMeanwhile(var newer) -> meanwhile(newer);
        }
    }

    private void done() {
        close();
        after.run();
    }

    /** The person has now seen the newer choice, and decides. */
    private void meanwhile(ForecastChoice newer) {
        seen = newer;
        trouble.say(say.it(
                "{0} chose {1} meanwhile. Nothing of yours was saved. Save again to put yours in its place, or cancel.",
                newer.by(), Way.of(say, newer.source()).name()));
    }
}
