package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.takeoff.CutList;
import drylap.takeoff.Supplies;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.TakeOffChoice;
import drylap.ui.drawn.TakeOffSheet;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.PaperLinks;
import drylap.ui.shell.Spoken;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What installs take and how strips are cut: of a day over all crews, or of a site. */
@Route(TakeOffView.PATH)
@Needs({Operation.SEE_WEEK_SHEET, Operation.SEE_FOLDERS})
@Menu(title = "Take-off", order = 2.7)
@CssImport("./take-off.css")
class TakeOffView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    static final String PATH = "take-off";

    private final transient Speech say;
    private final Select<TakeOffChoice> of = new Select<>();
    private final Div result = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable TakeOffChoice choice;

    TakeOffView(SignedIn signedIn) {
        say = new Speech(signedIn.reading());
        addClassName("take-off");
        result.addClassName("result");
        of.setLabel(say.it("Of"));
        of.addValueChangeListener(event -> {
            if (event.isFromClient()) choose(event.getValue());
        });
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Take-off");
    }

    /** The way to it from where a day or a site is shown. */
    static RouterLink link(String words, Optional<TakeOffChoice> to) {
        var link = new RouterLink(words, TakeOffView.class);
        to.ifPresent(one -> link.setQueryParameters(QueryParameters.simple(one.parameters())));
        return link;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        choice = TakeOffChoice.of(event.getLocation().getQueryParameters().getParameters())
                .orElse(choice);
    }

    private void choose(TakeOffChoice now) {
        choice = now;
        UI.getCurrent()
                .getPage()
                .getHistory()
                .replaceState(null, new Location(PATH, QueryParameters.simple(now.parameters())));
        if (shown != null) show(shown);
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        removeAll();
        List<TakeOffChoice> all = TakeOffChoice.all(now);
        if (now.folder().openings().isEmpty()) {
            add(Panels.noOpening(say));
            return;
        }
        // a list that stays as it is also stays open
        if (!of.getListDataView().getItems().toList().equals(all)) of.setItems(all);
        of.setItemLabelGenerator(one -> one.words(say, now));
        if (choice == null || !all.contains(choice)) choice = all.getFirst();
        of.setValue(choice);
        add(of, result);
        result.removeAll();
        lay(now, choice);
    }

    private void lay(FolderShown now, TakeOffChoice asked) {
        try {
            TakeOffSheet.of(say, now, asked)
                    .ifPresentOrElse(
                            sheet -> lay(now, asked, sheet),
                            () -> result.add(new Paragraph(say.it("Nothing is installed on that day."))));
        } catch (IllegalArgumentException unknown) {
            result.add(new Paragraph(say.it("What is needed cannot be said: {0}.", Unfit.saying(unknown))));
        }
    }

    private void lay(FolderShown now, TakeOffChoice asked, TakeOffSheet sheet) {
        Supplies supplies = sheet.supplies();
        if (supplies.isEmpty()) {
            result.add(new Paragraph(say.it("Nothing is left to put on.")));
            return;
        }
        boolean published = now.choice().lookAtPublished();
        result.add(
                new SharesPanel(say, now.name(), sheet),
                PaperLinks.takeOff(say, now.stored().id(), published, sheet.title(), asked.parameters()));
        supplies.joints().forEach(how -> result.add(new Paragraph(say.it(how))));
        for (CutList cut : supplies.cuts()) result.add(new CutListPanel(say, now.name(), cut));
        var first = new Paragraph(say.it(Supplies.FIRST));
        first.addClassName("hint");
        result.add(first);
    }
}
