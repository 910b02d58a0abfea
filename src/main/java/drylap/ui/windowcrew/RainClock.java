package drylap.ui.windowcrew;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import drylap.speech.Speech;
import drylap.ui.drawn.RainCallSheet;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** When the rain comes: by the forecast, until whoever sees the sky says otherwise. */
final class RainClock extends Div {
    private static final int STEP_MIN = 5;
    private static final int MOST_MIN = 12 * 60;
    /** Where the forecast has no rain and someone sees it come, the minutes begin here. */
    private static final int FIRST_MIN = 30;

    private final transient RainDesk desk;
    private final transient Runnable changed;
    private final Paragraph words = new Paragraph();
    private final Button forecast = new Button("", _ -> say(null));
    private transient @Nullable Instant seenAt;
    private int minutes;

    RainClock(Speech say, RainDesk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
        addClassName("rain-clock");
        words.getElement().setAttribute("role", "status");
        var sooner = step("−", say.it("Rain {0} minutes sooner", STEP_MIN), -STEP_MIN);
        var later = step("+", say.it("Rain {0} minutes later", STEP_MIN), STEP_MIN);
        forecast.setText(say.it("As the forecast has it"));
        forecast.addClassName("as-forecast");
        add(sooner, words, later, forecast);
    }

    private Button step(String sign, String says, int by) {
        var button = new Button(sign, _ -> say(desk.in(minutes < 0 ? FIRST_MIN : next(by))));
        button.setAriaLabel(says);
        button.addClassName("step");
        return button;
    }

    /** To the next round figure. */
    private int next(int by) {
        int rounded = by > 0 ? Math.floorDiv(minutes, STEP_MIN) * STEP_MIN : Math.ceilDiv(minutes, STEP_MIN) * STEP_MIN;
        return Math.clamp(rounded + by, 0, MOST_MIN);
    }

    private void say(@Nullable Instant at) {
        seenAt = at;
        changed.run();
    }

    void asForecast() {
        seenAt = null;
    }

    @Nullable
    Instant seenAt() {
        return seenAt;
    }

    void show(RainCallSheet sheet) {
        minutes = sheet.minutes();
        words.setText(sheet.rain());
        forecast.setVisible(seenAt != null);
    }
}
