package drylap.ui.windowcrew;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.kernel.FolderId;
import drylap.speech.Speech;
import drylap.ui.components.OpeningGlyph;
import drylap.ui.drawn.RainCallSheet;
import drylap.ui.drawn.RainCallSheet.Left;
import drylap.ui.drawn.RainCallSheet.Stop;

/** The openings in the order in which to close or cover them, and what is left; each leads to its steps. */
final class RainStops extends Div {
    private final transient Speech say;

    RainStops(Speech say) {
        this.say = say;
    }

    void show(FolderId folder, RainCallSheet sheet) {
        removeAll();
        if (!sheet.water().isEmpty()) add(StopCard.words("water", sheet.water()));
        var order = new OrderedList();
        for (var stop : sheet.stops()) order.add(stop(folder, order.getComponentCount() + 1, stop));
        if (!sheet.stops().isEmpty()) add(order);
        if (!sheet.left().isEmpty()) add(new H2(say.it("Left open when the rain comes")), left(folder, sheet));
        if (sheet.remarks().isEmpty()) return;
        var remarks = new UnorderedList();
        remarks.addClassName("remarks");
        sheet.remarks().forEach(one -> remarks.add(new ListItem(one)));
        add(remarks);
    }

    private static ListItem stop(FolderId folder, int number, Stop stop) {
        var act = new Span(stop.act());
        act.addClassNames("standing", stop.close() ? "ready" : "not-ready");
        var head = new H2(number + " · ");
        head.add(act, new Span(" " + stop.opening()));
        var text = new Div(
                head,
                StopCard.words("place", stop.place()),
                StopCard.words("work", stop.when()),
                StopCard.words("soft", stop.water()));
        var steps = StopCard.steps(folder, stop.opening());
        steps.add(new OpeningGlyph(stop.glyph()), text);
        var item = new ListItem(steps);
        item.addClassName("stop");
        return item;
    }

    private static UnorderedList left(FolderId folder, RainCallSheet sheet) {
        var list = new UnorderedList();
        list.addClassName("left");
        sheet.left().forEach(one -> list.add(left(folder, one)));
        return list;
    }

    private static ListItem left(FolderId folder, Left one) {
        var steps = StopCard.steps(folder, one.opening());
        steps.setText("%s, %s: %s".formatted(one.opening(), one.place(), one.water()));
        return new ListItem(steps);
    }
}
