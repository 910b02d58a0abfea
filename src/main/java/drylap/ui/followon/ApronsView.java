package drylap.ui.followon;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.components.FacadeDrawing;
import drylap.ui.drawn.ApronFacts;
import drylap.ui.drawn.ApronSheet;
import drylap.ui.drawn.ApronSheetPresenter;
import drylap.ui.drawn.Aprons;
import drylap.ui.drawn.Aprons.Face;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import drylap.ui.drawn.BookedDays;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Which aprons wait for the trade that follows, on one facade at a time. */
@Route("aprons")
@Needs(Operation.SEE_APRONS)
@Menu(title = "Aprons", order = 20)
class ApronsView extends Div implements BeforeEnterObserver, Deeds, Spoken {
    private static final String OPENING = "opening";
    private static final Set<String> TOPICS = Set.of("progress", "handoff", "plan", "people");

    private final transient AcceptanceDesk desk;
    private final transient ReturnCounter returns;
    private final transient BookingDesk bookings;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private final Select<Face> faces = new Select<>();
    private final FacadeDrawing drawing = new FacadeDrawing();
    private final Div courses = new Div();
    private final Div apron = new Div();
    private final Div empty = new Div();
    private final Notice notice;
    private final Div wall = new Div(faces, drawing, courses);
    private final BookedDaysPanel booked;
    private @Nullable FacadeId facade;
    private @Nullable OpeningId chosen;
    private transient @Nullable Shown shown;

    /** What stands on the page, so that news that change nothing here leave it and its focus alone. */
    private record Shown(ApronFacts facts, Aprons aprons, Optional<Face> face, Optional<ApronSheet> sheet) {
        boolean looksLike(@Nullable Shown other) {
            return other != null && menu().equals(other.menu()) && face.equals(other.face) && sheet.equals(other.sheet);
        }

        /** Of the other walls no more is on the page. */
        private List<Object> menu() {
            return aprons.faces().stream()
                    .<Object>map(one -> List.of(one.id(), one.title(), one.toAccept()))
                    .toList();
        }
    }

    private final class Booking implements BookedDaysPanel.Desk {
        @Override
        public void book(Site site, LocalDate day, String note) {
            facts().ifPresent(facts -> bookings.book(signedIn.person(), facts.id(), site, day, note));
            refresh();
        }

        @Override
        public void takeBack(BookedDays.Row row) {
            facts().ifPresent(facts -> bookings.takeBack(signedIn.person(), facts.id(), row));
            refresh();
        }
    }

    ApronsView(AcceptanceDesk desk, ReturnCounter returns, BookingDesk bookings, SignedIn signedIn, News news) {
        this.desk = desk;
        this.returns = returns;
        this.bookings = bookings;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        notice = new Notice(say, this::refresh);
        booked = new BookedDaysPanel(say, new Booking());
        addClassName("aprons-view");
        wall.addClassNames("apron-wall", "panel");
        courses.addClassName("courses");
        empty.addClassName("empty");
        empty.add(
                new H2(say.it("No aprons to show")),
                new Paragraph(say.it("Nothing at your sites has been published yet.")));
        faces.setLabel(say.it("Facade"));
        faces.setItemLabelGenerator(this::label);
        faces.addValueChangeListener(event -> {
            if (event.isFromClient() && event.getValue() != null) turnTo(event.getValue());
        });
        drawing.onOpeningChosen(this::choose);
        add(notice, empty, wall, apron, booked);
        Live.follow(this, news, TOPICS, this::refreshTold);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        chosen = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(OPENING)
                .filter(id -> !id.isBlank())
                .map(OpeningId::new)
                .orElse(null);
        refresh();
    }

    @Override
    public void accept(Seen seen) {
        facts().ifPresent(facts -> {
            notice.say(desk.accept(signedIn.person(), facts.id(), seen, UUID.randomUUID()));
            redraw();
        });
    }

    @Override
    public void mark(LineToMark line) {
        facts().ifPresent(facts -> {
            notice.say(desk.mark(signedIn.person(), facts.id(), line));
            redraw();
        });
    }

    @Override
    public void giveBack(ApronSheet sheet) {
        facts().ifPresent(facts -> new ReturnDialog(say, sheet, facts.id(), returns, signedIn, result -> {
                    notice.say(result);
                    redraw();
                })
                .open());
    }

    @Override
    public String called() {
        return say.it("Aprons");
    }

    private Optional<ApronFacts> facts() {
        return Optional.ofNullable(shown).map(Shown::facts);
    }

    /** Also where nothing changed: a button that was pressed is to be pressed again. */
    private void redraw() {
        shown = null;
        refresh();
    }

    private void refresh() {
        refresh(desk::facts);
    }

    private void refreshTold() {
        refresh(desk::toldFacts);
    }

    private void refresh(Function<Person, Optional<ApronFacts>> fetch) {
        signedIn.find()
                .filter(who -> who.may(Operation.SEE_APRONS))
                .ifPresentOrElse(
                        who -> show(who, fetch.apply(who)),
                        () -> getUI().ifPresent(ui -> ui.getPage().reload()));
    }

    private void show(Person who, Optional<ApronFacts> all) {
        var found = all.filter(facts -> !facts.states().isEmpty());
        empty.setVisible(found.isEmpty());
        wall.setVisible(found.isPresent());
        apron.setVisible(found.isPresent());
        booked.setVisible(found.isPresent());
        found.ifPresent(facts -> booked.show(bookings.days(who, facts)));
        found.map(facts -> look(facts, who)).ifPresent(now -> {
            boolean same = now.looksLike(shown);
            shown = now;
            if (!same) draw(now);
        });
    }

    private Shown look(ApronFacts facts, Person who) {
        var aprons = desk.aprons(facts, who);
        var face = Optional.ofNullable(chosen)
                .flatMap(aprons::faceOf)
                .filter(one -> facade == null || one.id().equals(facade))
                .or(() -> Optional.ofNullable(facade).flatMap(aprons::face))
                .or(() -> mostToAccept(aprons));
        var sheet = Optional.ofNullable(chosen).flatMap(opening -> ApronSheetPresenter.sheet(facts, who, opening));
        return new Shown(facts, aprons, face, sheet);
    }

    private static Optional<Face> mostToAccept(Aprons aprons) {
        return aprons.faces().stream().reduce((most, next) -> next.toAccept() > most.toAccept() ? next : most);
    }

    private void draw(Shown now) {
        faces.setItems(now.aprons().faces());
        now.face().ifPresent(face -> {
            facade = face.id();
            faces.setValue(face);
            drawing.show(face.wall());
            courses.removeAll();
            face.courses().reversed().forEach(course -> courses.add(new CoursePanel(say, face.id(), course, this)));
        });
        apron.removeAll();
        now.sheet().ifPresentOrElse(this::showApron, this::askForOne);
    }

    private void showApron(ApronSheet sheet) {
        drawing.choose(sheet.opening());
        apron.add(new ApronPanel(say, sheet, this));
    }

    private void askForOne() {
        var hint = Panels.panel("apron-panel", say.it("One opening"));
        hint.add(new Paragraph(say.it("Point at an opening of the wall to accept, return or mark it alone.")));
        apron.add(hint);
    }

    private void turnTo(Face face) {
        facade = face.id();
        chosen = null;
        redraw();
    }

    private void choose(OpeningId opening) {
        chosen = opening;
        redraw();
    }

    private String label(Face face) {
        return face.toAccept() == 0 ? face.title() : say.it("{0} ({1} to accept)", face.title(), face.toAccept());
    }
}
