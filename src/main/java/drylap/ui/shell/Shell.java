package drylap.ui.shell;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.kernel.Caution;
import drylap.kernel.Language;
import drylap.planning.RunState;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.platform.Subscription;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.ThemeSwitch;
import drylap.ui.drawn.Run;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/** The frame of every screen. */
@Layout
@CssImport("./theme.css")
@CssImport("./page.css")
@CssImport("./planner.css")
@CssImport("./admin.css")
@CssImport("./follow.css")
@CssImport("./forecasts.css")
@CssImport("./rules.css")
@CssImport("./season.css")
public class Shell extends Div implements RouterLayout {
    private final Desk desk;
    private final Main place = new Main();
    private final FolderPicker picker;
    private final transient Speech say;
    private @Nullable FolderView view;
    private @Nullable Subscription watch;
    private @Nullable Subscription news;
    private final transient News board;
    private final AtomicBoolean looking = new AtomicBoolean();
    private Seen seen = Seen.NOTHING;

    /** Which run was seen last, and whether its first plan and its end were. */
    private record Seen(long run, boolean planned, boolean ended) {
        static final Seen NOTHING = new Seen(0, false, false);

        static Seen of(RunState state) {
            int tasks = state.progress().planned() + state.progress().unplanned();
            return new Seen(state.id().value(), tasks > 0, state.status().ended());
        }
    }

    Shell(Desk desk, SignedIn signedIn, AuthenticationContext door, News board) {
        this.desk = desk;
        this.board = board;
        var who = signedIn.person();
        say = new Speech(who.reading());
        picker = new FolderPicker(desk, say);
        addClassName("shell");
        var caution = new Paragraph(Icons.CAUTION.svg(), new Span(say.it(Caution.WORDS)));
        caution.addClassName("caution");
        add(header(who, say, door), caution, place);
        desk.onTurned(this::turn);
    }

    private Header header(Person who, Speech say, AuthenticationContext door) {
        var name = new Span(Icons.MARK.svg(), new Span("Drylap"));
        name.addClassName("brand");
        var tools = new Div(picker, new SignedInAs(who, say, door), new ThemeSwitch());
        tools.addClassName("tools");
        return new Header(name, new Ways(who, say), tools);
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        place.removeAll();
        place.getElement().appendChild(content.getElement());
        if (content instanceof Spoken) place.getElement().removeAttribute("lang");
        else place.getElement().setAttribute("lang", Language.ENGLISH.code());
        view = content instanceof FolderView one ? one : null;
        showFolder();
    }

    @Override
    public void removeRouterLayoutContent(HasElement oldContent) {
        place.removeAll();
        view = null;
    }

    @Override
    protected void onAttach(AttachEvent event) {
        UI ui = event.getUI();
        startWatching(ui);
        news = board.listen(item -> heard(item, ui));
    }

    @Override
    protected void onDetach(DetachEvent event) {
        stopWatching();
        if (news != null) news.close();
        news = null;
    }

    /** On the news thread: many items at once make one look. */
    private void heard(NewsItem item, UI ui) {
        if (item.topic().equals(People.TOPIC) || !looking.compareAndSet(false, true)) return;
        Turns.take(ui, this::lookAnew);
    }

    private void lookAnew() {
        looking.set(false);
        if (view == null || !desk.isTheirs()) {
            desk.forget();
            return;
        }
        desk.reloadTold();
        showFolder();
    }

    private void turn() {
        stopWatching();
        showFolder();
        getUI().ifPresent(this::startWatching);
    }

    private void showFolder() {
        picker.refresh();
        if (view == null) return;
        FolderView current = view;
        desk.shown().ifPresent(current::show);
    }

    private void startWatching(UI ui) {
        seen = Seen.NOTHING;
        if (!desk.isTheirs()) return;
        Optional<Subscription> begun = desk.watch(state -> ui.access(() -> follow(state)));
        watch = begun.orElse(null);
    }

    private void stopWatching() {
        if (watch != null) watch.close();
        watch = null;
    }

    private void follow(RunState state) {
        if (!desk.isTheirs()) return; // whoever watched has been signed out since
        Seen now = Seen.of(state);
        boolean first = seen.equals(Seen.NOTHING);
        if (!now.equals(seen)) {
            seen = now;
            if (!first || desk.shown().flatMap(shown -> shown.plan()).isEmpty()) {
                desk.reload();
                showFolder();
            }
        }
        if (view != null) view.show(Run.of(view instanceof Spoken ? say : Speech.ENGLISH, state));
    }
}
