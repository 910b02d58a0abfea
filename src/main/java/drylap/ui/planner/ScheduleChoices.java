package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.Coded;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.windowschedule.Choices;
import drylap.windowschedule.Choices.StandIns;
import drylap.windowschedule.Draft;
import drylap.windowschedule.LengthUnit;
import drylap.windowschedule.LetterMeaning;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Walls;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is said once for all rows of a schedule. */
final class ScheduleChoices extends Div {
    private final transient Speech say;
    private final transient Consumer<Choices> change;
    private final Div meaning = fields();
    private final Div elevations = fields();
    private final StoreyFields storeys;
    private final Div standIns = fields();
    private final Paragraph clearance = new Paragraph();
    private final Select<LetterMeaning> letters = new Select<>();
    private transient Choices now = new Choices(
            new SiteId("?"),
            null,
            null,
            Map.of(),
            Map.of(),
            new StandIns(null, null, null, null, null, null, null, false, 0),
            "");
    private transient Set<String> asked = Set.of();

    ScheduleChoices(Speech say, Consumer<Choices> change) {
        this.say = say;
        storeys = new StoreyFields(say, this::levels);
        letters.setLabel(say.it("What a bare A or B means as a method"));
        this.change = change;
        add(
                new H3(say.it("Said once for all rows")),
                meaning,
                clearance,
                elevations,
                storeys,
                new H3(say.it("Where the schedule says nothing")),
                new Paragraph(
                        say.it(
                                "Wall, level, frame and method hold for rows without them; what follows holds for new openings alone. "
                                        + "Several openings of a mark are numbered: A-1, A-2 and so on; a mark of one opening is its name. New ones of a course stand in the "
                                        + "order of their position along the wall, else of the rows; sill height and position are unknown where the schedule has none.")),
                standIns);
    }

    private static Div fields() {
        var fields = new Div();
        fields.addClassName("asked");
        return fields;
    }

    void begin(JobFolder folder, Draft draft) {
        now = draft.choices();
        asked = Set.of();
        storeys.begin();
        var rules = folder.rules().at(now.site());
        clearance.setText(say.it(
                "Sizes are those of the rough opening. Where only the frame is given, {0} mm are added in width and height: {1}.",
                rules.value(Rule.ROUGH_CLEARANCE_MM), Saying.of(Rule.ROUGH_CLEARANCE_MM.source())));
        meaning.removeAll();
        letters.setItemLabelGenerator(one -> one == null ? "" : say.it(one.words()));
        letters.setPlaceholder(say.it("choose"));
        letters.setItems(LetterMeaning.values());
        letters.addValueChangeListener(event -> {
            if (event.isFromClient()) tell(now.withLetters(event.getValue()));
        });
        meaning.add(
                choice(
                        say.it("Numbers without a unit are"),
                        LengthUnit.values(),
                        unit -> say.it(unit.words()),
                        now.unit(),
                        unit -> now.withUnit(unit)),
                letters,
                prefix());
        standIns.removeAll();
        askStandIns(new Walls(folder.facades(), now.site()));
        show(folder, draft);
    }

    private TextField prefix() {
        var prefix = new TextField(say.it("Before each mark, to name its openings"));
        prefix.setHelperText(say.it("may be blank; names are unique in the whole job folder"));
        prefix.setMaxLength(30);
        prefix.setValue(now.prefix());
        prefix.addValueChangeListener(event -> {
            if (event.isFromClient()) tell(now.withPrefix(event.getValue().strip()));
        });
        return prefix;
    }

    private void askStandIns(Walls walls) {
        StandIns first = now.standIns();
        standIns.add(
                choice(say.it("Wall"), walls.names().toArray(String[]::new), name -> name, first.wall(), this::wall),
                number(say.it("Level"), first.level(), 200, this::level),
                coded(say.it("Frame"), Frame.class, first.frame(), this::frame),
                coded(say.it("Method"), Method.class, first.method(), this::method),
                coded(say.it("Approach"), Approach.class, first.approach(), this::approach),
                coded(say.it("Second layer"), SecondLayer.class, first.secondLayer(), this::secondLayer),
                date(first.deliveredOn()),
                choice(
                        say.it("Water test"),
                        new Boolean[] {false, true},
                        yes -> yes ? say.it("yes") : "no",
                        first.waterTest(),
                        this::waterTest),
                number(say.it("Priority"), first.priority(), 100, this::priority));
    }

    private <T extends Enum<T> & Coded> Select<T> coded(
            String label, Class<T> type, @Nullable T first, Function<T, Choices> chosen) {
        return choice(label, type.getEnumConstants(), this::called, first, chosen);
    }

    /** Methods are named by their letters. */
    private String called(Coded one) {
        return one instanceof Method ? one.code() : say.it(one.code());
    }

    private <T> Select<T> choice(
            String label, T[] items, Function<T, String> words, @Nullable T first, Function<T, Choices> chosen) {
        Select<T> select = ChangeFields.select(label);
        select.setItemLabelGenerator(item -> item == null ? "" : words.apply(item));
        select.setItems(items);
        if (first != null) select.setValue(first);
        select.setPlaceholder(say.it("choose"));
        select.addValueChangeListener(event -> {
            if (event.isFromClient() && event.getValue() != null) tell(chosen.apply(event.getValue()));
        });
        return select;
    }

    private TextField number(
            String label, @Nullable Integer first, int most, Function<@Nullable Integer, Choices> chosen) {
        var field = new TextField(label);
        field.setValue(first == null ? "" : String.valueOf(first));
        field.setHelperText(say.it("a whole number up to {0}", most));
        field.addValueChangeListener(event -> {
            String text = event.getValue().strip();
            boolean right = text.matches("\\d{1,3}") && Integer.parseInt(text) <= most;
            field.setInvalid(!right && !text.isEmpty());
            field.setErrorMessage(say.it("accepted is {0}", Saying.of("a whole number up to {0}", most)));
            if (event.isFromClient()) tell(chosen.apply(right ? Integer.valueOf(text) : null));
        });
        return field;
    }

    private TextField date(@Nullable LocalDate first) {
        var field = new TextField(say.it("First date for setting"));
        field.setHelperText(say.it("such as 2026-04-13: from then on the windows are there"));
        field.setValue(first == null ? "" : first.toString());
        field.addValueChangeListener(event -> {
            LocalDate date = date(event.getValue().strip());
            field.setInvalid(date == null && !event.getValue().isBlank());
            field.setErrorMessage(say.it("accepted is {0}", Saying.of("a date such as 2026-04-13")));
            if (event.isFromClient()) tell(deliveredOn(date));
        });
        return field;
    }

    private static @Nullable LocalDate date(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            return date.getYear() >= 2000 && date.getYear() < 2100 ? date : null;
        } catch (DateTimeException notADate) {
            return null;
        }
    }

    void show(JobFolder folder, Draft draft) {
        now = draft.choices();
        letters.setVisible(draft.hasBareLetters());
        askElevations(folder, draft.elevations());
        storeys.show(now.levels(), draft.storeys());
    }

    /** Elevations are asked for anew only where other ones came up, so that an open list stays open. */
    private void askElevations(JobFolder folder, Set<String> names) {
        if (names.equals(asked)) return;
        asked = names;
        elevations.removeAll();
        var walls = new Walls(folder.facades(), now.site());
        names.forEach(name -> elevations.add(choice(
                say.it("Elevation {0}", ScheduleSaid.read(name)),
                walls.names().toArray(String[]::new),
                wall -> wall,
                now.walls()
                        .getOrDefault(
                                name,
                                walls.named(name).map(one -> one.id().facade()).orElse(null)),
                wall -> withWall(name, wall))));
    }

    private Choices withWall(String elevation, String wall) {
        Map<String, String> walls = new HashMap<>(now.walls());
        walls.put(elevation, wall);
        return now.withWalls(walls);
    }

    private void tell(Choices chosen) {
        now = chosen;
        change.accept(chosen);
    }

    private void levels(Map<String, Integer> levels) {
        tell(now.withLevels(levels));
    }

    private Choices wall(String wall) {
        return now.withStandIns(now.standIns().withWall(wall));
    }

    private Choices level(@Nullable Integer level) {
        return now.withStandIns(now.standIns().withLevel(level));
    }

    private Choices frame(Frame frame) {
        return now.withStandIns(now.standIns().withFrame(frame));
    }

    private Choices method(Method method) {
        return now.withStandIns(now.standIns().withMethod(method));
    }

    private Choices approach(Approach approach) {
        return now.withStandIns(now.standIns().withApproach(approach));
    }

    private Choices secondLayer(SecondLayer layer) {
        return now.withStandIns(now.standIns().withSecondLayer(layer));
    }

    private Choices deliveredOn(@Nullable LocalDate date) {
        return now.withStandIns(now.standIns().withDeliveredOn(date));
    }

    private Choices waterTest(boolean test) {
        return now.withStandIns(now.standIns().withWaterTest(test));
    }

    private Choices priority(@Nullable Integer priority) {
        return now.withStandIns(now.standIns().withPriority(priority == null ? 0 : priority));
    }
}
