package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.spring.annotation.SpringComponent;
import drylap.planning.PlanForecast;
import drylap.planning.PlanForecasts;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlannedWith;
import drylap.ui.shell.Unchanged;
import java.util.List;
import org.springframework.context.annotation.Scope;

/** By which forecasts the plan on the sheet was made; nothing at all where that is not known. */
@SpringComponent
@Scope("prototype")
final class PlannedWithPanel extends Div {
    private final transient PlanForecasts forecasts;
    private final transient Person who;
    private final transient Speech say;
    private final transient Unchanged drawn = new Unchanged();

    PlannedWithPanel(PlanForecasts forecasts, SignedIn signedIn) {
        this.forecasts = forecasts;
        who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("planned-with");
    }

    void show(FolderShown shown) {
        List<PlanForecast> by =
                shown.choice().shownId().map(plan -> forecasts.of(who, plan)).orElse(List.of());
        PlannedWith planned = PlannedWith.of(say, shown, by);
        if (drawn.since(planned)) return;
        removeAll();
        planned.lines().forEach(line -> add(new Paragraph(line)));
        planned.changed().forEach(this::changed);
        setVisible(!planned.lines().isEmpty());
    }

    private void changed(PlannedWith.Changed changed) {
        var line = new Paragraph(
                Panels.text(say.it("Another forecast has come since. {0}.", changed.words()) + " ", "strong"));
        line.add(ForecastChangeView.link(changed.site(), say.it("See what it changes")));
        add(line);
    }
}
