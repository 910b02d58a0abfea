package drylap.ui.windowcrew;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.drawn.FolderShown;
import drylap.ui.followon.Notice;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.PaperLinks;
import drylap.ui.shell.Spoken;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Where the crew goes today, in order, and what is ready. */
@Route("my-day")
@Needs(Operation.SEE_CREW_DAY)
@Menu(title = "My day", order = 10)
@CssImport("./window-crew.css")
class MyDayView extends Div implements Spoken {
    private static final Set<String> TOPICS = Set.of("plan", "progress", "handoff", "absence", "rule", "people");

    private final transient CrewDesk desk;
    private final transient TestDesk tests;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private final Select<CrewId> crews = new Select<>();
    private final H1 title = new H1();
    private final Paragraph nothing = new Paragraph();
    private final RouterLink rain = new RouterLink("", RainCallView.class);
    private final OrderedList stops = new OrderedList();
    private final Div load = new Div();
    private final Notice notice;
    private long ahead;

    MyDayView(CrewDesk desk, TestDesk tests, SignedIn signedIn, News news) {
        this.desk = desk;
        this.tests = tests;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        notice = new Notice(say, this::refresh);
        addClassNames("crew-screen", "my-day");
        crews.setLabel(say.it("Crew"));
        crews.addValueChangeListener(event -> {
            if (event.isFromClient()) refresh();
        });
        var days = new Div(
                go(say.it("Day before"), -1),
                new Button(say.it("Today"), _ -> turn(-ahead)),
                go(say.it("Day after"), 1));
        days.addClassName("days");
        rain.setText(say.it("Rain coming? What to close or cover first"));
        rain.addClassName("way-on");
        add(crews, title, days, rain, notice, nothing, stops, load);
        Live.follow(this, news, TOPICS, () -> refresh(desk::told));
        refresh();
    }

    private Button go(String words, int days) {
        return new Button(words, _ -> turn(days));
    }

    private void turn(long days) {
        ahead += days;
        refresh();
    }

    /** Asks for everything anew, the person's rights too. */
    private void refresh() {
        refresh(desk::shown);
    }

    private void refresh(Function<Person, Optional<FolderShown>> fetch) {
        stops.removeAll();
        load.removeAll();
        var who = signedIn.find().filter(one -> one.may(Operation.SEE_CREW_DAY));
        rain.setVisible(who.filter(one -> one.may(Operation.CALL_RAIN)).isPresent());
        var shown = who.flatMap(fetch);
        var theirs = shown.map(folder -> desk.crews(who.orElseThrow(), folder)).orElse(java.util.List.of());
        CrewId before = crews.getValue();
        var chosen = before != null && theirs.contains(before) ? before : null;
        crews.setItems(theirs);
        crews.setVisible(theirs.size() > 1);
        if (shown.isEmpty() || theirs.isEmpty()) {
            tell(
                    shown.isEmpty()
                            ? say.it("No plan is published yet; the scheduler publishes one.")
                            : say.it("You are in no crew of the job folder in work; ask who keeps the people."));
            return;
        }
        crews.setValue(chosen == null ? theirs.getFirst() : chosen);
        show(shown.get(), crews.getValue());
    }

    private void tell(String words) {
        title.setText(called());
        nothing.setText(words);
        nothing.setVisible(true);
    }

    @Override
    public String called() {
        return say.it("My day");
    }

    private void show(FolderShown shown, CrewId crew) {
        LocalDate date = desk.today(shown, crew).plusDays(ahead);
        var day = desk.day(say, shown, crew, date);
        title.setText(day.title());
        nothing.setText(day.nothing());
        nothing.setVisible(!day.nothing().isEmpty());
        carry(shown, crew, date);
        if (!day.stops().isEmpty()) load.add(PaperLinks.day(say, crew, date));
        boolean mayTest = signedIn.person().may(Operation.RECORD_WATER_TEST);
        day.stops().forEach(stop -> {
            var card = new StopCard(say, shown.stored().id(), stop);
            if (mayTest && stop.waterTest() && !stop.done())
                card.record(() -> ask(shown.stored().id(), new OpeningId(stop.opening())));
            stops.add(card);
        });
    }

    private void carry(FolderShown shown, CrewId crew, LocalDate date) {
        try {
            desk.load(shown, crew, date).map(list -> new LoadList(say, list)).ifPresent(load::add);
        } catch (IllegalArgumentException tooLong) {
            load.add(new Paragraph(say.it("What to load cannot be said: {0}", Unfit.saying(tooLong))));
        }
    }

    private void ask(FolderId folder, OpeningId opening) {
        var begun = tests.begin(signedIn.person(), folder, opening);
        new WaterTestDialog(
                        say,
                        opening,
                        (test, passed, note) -> tests.record(signedIn.person(), begun, test, passed, note),
                        result -> {
                            notice.say(result);
                            refresh();
                        })
                .open();
    }
}
