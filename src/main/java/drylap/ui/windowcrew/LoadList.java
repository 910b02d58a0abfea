package drylap.ui.windowcrew;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.takeoff.CutList;
import drylap.takeoff.VanList;

/** What goes into the van for a day, folded up below its stops. */
final class LoadList extends NativeDetails {
    static final String FIRST =
            "Sizes are the trade's defaults or your firm's own; the window maker's instructions come first.";

    LoadList(Speech say, VanList load) {
        addClassName("load");
        setSummaryText(say.it("Load for this day: {0}", load.counts()));
        Div inside = new Div(new Paragraph(say.it("Strips: {0}", load.lengths())));
        load.cuts().forEach(cut -> inside.add(new Paragraph(say.it(cut.saying())), rolls(say, cut)));
        inside.add(new Paragraph(say.it(FIRST)));
        setContent(inside);
    }

    private static UnorderedList rolls(Speech say, CutList cut) {
        UnorderedList rolls = new UnorderedList();
        cut.rolls().forEach(roll -> rolls.add(new ListItem(say.it(roll.saying()))));
        return rolls;
    }
}
