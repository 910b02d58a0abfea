package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import drylap.speech.Speech;
import drylap.ui.components.PlanMeter;
import drylap.ui.drawn.Run;
import drylap.ui.shell.Desk;

/** Starts and stops planning, and shows how it goes. */
final class PlanBar extends Div {
    private final Select<Long> seconds = new Select<>();
    private final Button plan = new Button();
    private final Button stop = new Button();
    private final PlanMeter meter = new PlanMeter();

    PlanBar(Speech say, Desk desk) {
        plan.setText(say.it("Plan again"));
        stop.setText(say.it("Stop"));
        addClassName("plan-bar");
        seconds.setAriaLabel(say.it("Planning time"));
        seconds.setItems(10L, 30L, 60L, 300L, 900L);
        seconds.setItemLabelGenerator(PlanBar::time);
        seconds.setValue(Desk.FIRST_PLAN_SECONDS);
        plan.addClickListener(_ -> desk.plan(seconds.getValue()));
        stop.addClickListener(_ -> {
            stop.setEnabled(false);
            desk.stop();
        });
        stop.setVisible(false);
        meter.setVisible(false);
        add(meter, seconds, plan, stop);
    }

    void show(Run run) {
        meter.setVisible(true);
        meter.show(run);
        plan.setVisible(run.ended());
        seconds.setVisible(run.ended());
        stop.setEnabled(true);
        stop.setVisible(!run.ended());
    }

    static String time(long seconds) {
        return seconds < 60 ? seconds + " s" : seconds / 60 + " min";
    }
}
