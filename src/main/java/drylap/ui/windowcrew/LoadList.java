package drylap.ui.windowcrew;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.takeoff.CutList;
import drylap.takeoff.Supplies;
import drylap.takeoff.VanList;

/** What goes into the van for a day, folded up below its stops. */
final class LoadList extends NativeDetails {
    LoadList(Speech say, VanList load) {
        addClassName("load");
        setSummaryText(say.it("Load for this day: {0}", load.supplies().sums().counts()));
        Div inside = new Div(
                new Paragraph(say.it("Strips: {0}", load.supplies().sums().lengths())));
        load.supplies().cuts().forEach(cut -> inside.add(new Paragraph(say.it(cut.saying())), rolls(say, cut)));
        load.supplies().joints().forEach(how -> inside.add(new Paragraph(say.it(how))));
        inside.add(new Paragraph(say.it(Supplies.FIRST)));
        setContent(inside);
    }

    private static UnorderedList rolls(Speech say, CutList cut) {
        UnorderedList rolls = new UnorderedList();
        cut.rolls().forEach(roll -> rolls.add(new ListItem(say.it(roll.saying()))));
        return rolls;
    }
}
