package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.RouterLink;
import drylap.speech.Speech;
import drylap.ui.drawn.OddsSheet;
import drylap.ui.drawn.OddsSheet.Wall;
import java.util.List;

/** What odds say and what they rest on, in words. */
final class OddsPanels {
    private final Speech say;

    OddsPanels(Speech say) {
        this.say = say;
    }

    /** Said before all else, with a sign beside the words. */
    Div old(OddsSheet sheet) {
        var old = new Div(
                Panels.text(say.it("These odds are old.") + " ", "strong"),
                Panels.text(say.it("Since they were reckoned something changed: {0}.", sheet.changed())));
        old.addClassName("odds-old");
        old.getElement().setAttribute("role", "status");
        return old;
    }

    static Div wall(Wall wall) {
        var lines = list(wall.lines());
        var one = new Div(new H3(wall.title()), lines);
        one.addClassName("odds-wall");
        if (!wall.due().isEmpty()) one.add(due(wall));
        return one;
    }

    private static Paragraph due(Wall wall) {
        var due = new Paragraph(Panels.text(wall.due(), "strong"));
        due.addClassName("due");
        return due;
    }

    Section drivers(OddsSheet sheet) {
        Section panel = Panels.panel("odds-drivers", say.it("What drives the risk"));
        panel.add(new H3(say.it("Openings most likely to get wet while open")));
        var openings = new OrderedList();
        sheet.openings()
                .forEach(one ->
                        openings.add(new ListItem(WallsView.link(one.opening()), Panels.text(" " + one.words()))));
        panel.add(openings, new H3(say.it("Days that cost the hand-overs most")));
        if (sheet.totals().isEmpty())
            panel.add(new Paragraph(
                    say.it("Days are weighed over all sites of the job folder; not all of them are yours.")));
        else if (sheet.days().isEmpty())
            panel.add(new Paragraph(say.it("It rained in no trial while crews were there.")));
        else {
            var days = new OrderedList();
            sheet.days().forEach(day -> days.add(new ListItem(day)));
            panel.add(days);
        }
        if (!sheet.totals().isEmpty()) panel.add(new H3(say.it("In a trial")), list(sheet.totals()));
        return panel;
    }

    Section rests(OddsSheet sheet) {
        Section panel = Panels.panel("odds-rests", say.it("What these odds rest on"));
        panel.add(new H3(say.it("Weather")), skies(sheet), new H3(say.it("Work")), list(sheet.rests()));
        panel.add(
                new Paragraph(
                        Panels.text(say.it("Set under") + " "),
                        new RouterLink(say.it("Rules"), RulesView.class),
                        Panels.text(
                                " (%s), "
                                        .formatted(
                                                say.it(
                                                        "warning of rain, spread of work, late deliveries, chance of rain beyond the forecast"))),
                        new RouterLink(say.it("Crews"), CrewsView.class),
                        Panels.text(
                                " (%s) ".formatted(say.it("install minutes, who comes when")) + say.it("and") + " "),
                        new RouterLink(say.it("Sites"), SitesView.class),
                        Panels.text(
                                " (%s). ".formatted(say.it("forecasts"))
                                        + say.it(
                                                "± is one standard error: another seed would give another figure, about so far off. "
                                                        + "It says nothing of whether the assumptions are right: compare plans by these odds rather than promise a day."))));
        return panel;
    }

    private static UnorderedList skies(OddsSheet sheet) {
        var skies = new UnorderedList();
        sheet.skies()
                .forEach(sky -> skies.add(new ListItem(
                        climateMark(), Panels.text(sky.site(), "strong"), Panels.text(": " + sky.words()))));
        return skies;
    }

    /** The ground on which charts draw days whose weather is not told. */
    static Div climateMark() {
        var mark = new Div();
        mark.addClassName("climate-mark");
        mark.getElement().setAttribute("aria-hidden", "true");
        return mark;
    }

    private static UnorderedList list(List<String> lines) {
        return new UnorderedList(lines.stream().map(ListItem::new).toArray(ListItem[]::new));
    }
}
