package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.RuleSheet;
import drylap.ui.drawn.SiteForecast.Lasting;

/** How rain lasts at a site; the scheduler says whether the plan counts with it. */
final class LastingPanel extends Div {
    LastingPanel(LastingDesk desk, Person who, FolderShown shown, SiteId site, Lasting lasting, Runnable after) {
        addClassName("rain-lasts");
        add(new Paragraph(lasting.words()));
        if (lasting.offered() == null || !desk.mayTake(who, site)) return;
        FolderId folder = shown.stored().id();
        long seen = desk.seen(who, folder, site);
        var say = new Speech(who.reading());
        var take = new Button(say.it("Count with {0}", RuleSheet.plain(lasting.offered())), _ -> {
            Notification.show(say.it(desk.take(who, folder, site, lasting, seen)));
            after.run();
        });
        take.setAriaLabel(say.it(
                "Count with rain that lasts by {0} at {1} from the next plan on",
                RuleSheet.plain(lasting.offered()), shown.site(site).name()));
        add(take);
    }
}
