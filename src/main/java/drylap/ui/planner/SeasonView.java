package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.kernel.FolderId;
import drylap.season.SiteOutlook;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;

/** A site's season: hours of use by month, when its work is through, and what one more crew would change. */
@Route("season")
@Needs(Operation.SEE_SEASON)
@Menu(title = "Season", order = 3.2)
class SeasonView extends Div implements FolderView, Spoken {
    private final transient SeasonDesk desk;
    private final transient Person who;
    private final transient Speech say;
    private final Select<Site> sites = new Select<>();
    private final Div result = new Div();
    private final Paragraph busy = new Paragraph();
    private final SeasonNormals normals;
    private transient @Nullable FolderShown shown;
    private transient @Nullable Site drawn;
    private int asked;

    SeasonView(SeasonDesk desk, SignedIn signedIn) {
        this.desk = desk;
        who = signedIn.person();
        say = new Speech(who.reading());
        normals = new SeasonNormals(say, desk, who, this::reckon);
        addClassName("season");
        sites.setLabel(say.it("Site"));
        sites.setItemLabelGenerator(Site::name);
        sites.addValueChangeListener(event -> {
            if (event.isFromClient()) reckon();
        });
        result.addClassName("result");
        result.getElement().setAttribute("aria-live", "polite");
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Season");
    }

    @Override
    public void show(FolderShown now) {
        boolean known = shown != null && shown.folder().equals(now.folder());
        shown = now;
        if (known) return; // news of a plan, say, on which no season depends
        removeAll();
        add(sites, result, normals);
        List<Site> all = now.folder().sites();
        Site before = sites.getValue();
        sites.setItems(all);
        sites.setValue(all.stream()
                .filter(one -> before != null && one.id().equals(before.id()))
                .findFirst()
                .orElseGet(all::getFirst));
        reckon();
    }

    /** Beside the page, which shows what it had of the site; an answer that came too late for another question is dropped. */
    void reckon() {
        FolderShown now = shown;
        Site site = sites.getValue();
        if (now == null || site == null) return;
        normals.show(now, site);
        if (!site.equals(drawn)) result.removeAll();
        busy.setText(say.it("Reckoning the season of {0}\u2026", site.name()));
        result.addComponentAsFirst(busy);
        int question = ++asked;
        FolderId folder = now.stored().id();
        UI ui = UI.getCurrent();
        Thread.startVirtualThread(() -> tell(ui, question, folder, site));
    }

    private void tell(UI ui, int question, FolderId folder, Site site) {
        SiteOutlook outlook = found(folder, site);
        try {
            ui.access(() -> {
                if (question == asked) draw(outlook, site);
            });
        } catch (UIDetachedException gone) {
            // whoever left does not need it any more
        }
    }

    private @Nullable SiteOutlook found(FolderId folder, Site site) {
        try {
            return desk.outlook(who, folder, site);
        } catch (RuntimeException e) {
            LoggerFactory.getLogger(SeasonView.class).error("a season's outlook failed", e);
            return null;
        }
    }

    private void draw(@Nullable SiteOutlook outlook, Site site) {
        drawn = site;
        result.removeAll();
        if (outlook == null)
            result.add(
                    new Paragraph(say.it("It could not be reckoned. Nothing was changed; the server's log says why.")));
        else new SeasonPanels(say).of(outlook, site).forEach(result::add);
    }
}
