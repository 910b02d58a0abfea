package drylap.ui.windowcrew;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.RainCallSheet;
import drylap.ui.drawn.RainCallSheet.Course;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which openings to close or cover before the rain, in which order. */
@Route("rain-call")
@Needs({Operation.SEE_CREW_DAY, Operation.CALL_RAIN})
@Menu(title = "Rain call", order = 11)
@CssImport("./window-crew.css")
@CssImport("./rain-call.css")
class RainCallView extends Div implements Spoken {
    private static final Set<String> TOPICS = Set.of("progress", "handoff", "plan", "rule", "absence");

    private final transient RainDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private final Select<Site> sites = new Select<>();
    private final Select<Course> standing = new Select<>();
    private final H1 title = new H1();
    private final Paragraph nothing = new Paragraph();
    private final RainClock clock;
    private final RainStops stops;
    private transient @Nullable RainCallSheet shown;

    RainCallView(RainDesk desk, SignedIn signedIn, News news) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        title.setText(called());
        stops = new RainStops(say);
        clock = new RainClock(say, desk, this::refresh);
        addClassNames("crew-screen", "rain-call");
        sites.setLabel(say.it("Site"));
        sites.setItemLabelGenerator(Site::name);
        sites.addValueChangeListener(event -> {
            if (event.isFromClient()) turn();
        });
        standing.setLabel(say.it("Where you stand now"));
        standing.setEmptySelectionAllowed(true);
        standing.setEmptySelectionCaption(say.it("On the way there"));
        standing.setItemLabelGenerator(course -> course == null ? say.it("On the way there") : course.words());
        standing.addValueChangeListener(event -> {
            if (event.isFromClient()) refresh();
        });
        add(title, caution(), sites, clock, standing, nothing, stops);
        Live.follow(this, news, TOPICS, this::refresh);
        Live.everyMinute(this, this::refresh);
        refresh();
    }

    @Override
    public String called() {
        return say.it("Rain call");
    }

    private Paragraph caution() {
        var caution =
                new Paragraph(say.it("Wind, rain and a wet scaffold make work at height more dangerous. This list sends"
                        + " nobody up: the competent person on site decides, and local codes come first."));
        caution.addClassName("beware");
        return caution;
    }

    /** Another site has another sky and other courses. */
    private void turn() {
        clock.asForecast();
        standing.clear();
        refresh();
    }

    /** Asks for everything anew, the person's rights too. */
    private void refresh() {
        var who = signedIn.find().filter(one -> one.may(Operation.CALL_RAIN)).orElse(null);
        var folder = who == null ? Optional.<FolderShown>empty() : desk.shown(who);
        var theirs = folder.map(one -> desk.sites(java.util.Objects.requireNonNull(who), one))
                .orElse(List.of());
        if (who == null || folder.isEmpty() || theirs.isEmpty()) tellNothing(folder.isEmpty());
        else
            show(
                    folder.get().stored().id(),
                    desk.sheet(who, folder.get(), chosen(theirs), standingAt(), clock.seenAt()));
    }

    private SiteId chosen(List<Site> theirs) {
        var before = sites.getValue();
        var now = theirs.stream()
                .filter(site -> before != null && site.id().equals(before.id()))
                .findFirst()
                .orElse(theirs.getFirst());
        if (!sites.getListDataView().getItems().toList().equals(theirs)) sites.setItems(theirs);
        sites.setValue(now);
        sites.setVisible(theirs.size() > 1);
        return now.id();
    }

    private @Nullable OpeningId standingAt() {
        var course = standing.getValue();
        return course == null ? null : new OpeningId(course.opening());
    }

    private void tellNothing(boolean unpublished) {
        shown = null;
        clock.setVisible(false);
        standing.setVisible(false);
        sites.setVisible(false);
        stops.removeAll();
        nothing.setVisible(true);
        nothing.setText(
                unpublished
                        ? say.it("No plan is published yet; the scheduler publishes one.")
                        : say.it("None of the sites of the job folder in work is yours."));
    }

    /** What has not changed stays as it is, so that nothing moves under a thumb. */
    private void show(FolderId folder, RainCallSheet sheet) {
        if (sheet.equals(shown)) return;
        shown = sheet;
        title.setText(sheet.title());
        clock.setVisible(true);
        clock.show(sheet);
        standing.setVisible(!sheet.stops().isEmpty());
        var before = standing.getValue();
        if (!standing.getListDataView().getItems().toList().equals(sheet.courses())) {
            standing.setItems(sheet.courses());
            standing.setValue(before == null || !sheet.courses().contains(before) ? null : before);
        }
        nothing.setText(sheet.nothing());
        nothing.setVisible(!sheet.nothing().isEmpty());
        stops.show(folder, sheet);
    }
}
