package drylap.ui.windowcrew;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.takeoff.CutList;
import drylap.takeoff.VanList;

/** What goes into the van for a day, folded up below its stops. */
final class LoadList extends NativeDetails {
    static final String FIRST =
            "Sizes are the trade's defaults or your firm's own; the window maker's instructions come first.";

    LoadList(VanList load) {
        addClassName("load");
        setSummaryText("Load for this day: " + load.counts());
        Div inside = new Div(new Paragraph("Strips: " + load.lengths()));
        load.cuts().forEach(cut -> inside.add(new Paragraph(cut.words()), rolls(cut)));
        inside.add(new Paragraph(FIRST));
        setContent(inside);
    }

    private static UnorderedList rolls(CutList cut) {
        UnorderedList rolls = new UnorderedList();
        cut.rolls().forEach(roll -> rolls.add(new ListItem(roll.words())));
        return rolls;
    }
}
