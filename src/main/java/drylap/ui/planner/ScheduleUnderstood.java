package drylap.ui.planner;

import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import drylap.planning.JobFolder;
import drylap.speech.Speech;
import drylap.ui.drawn.ScheduleWords;
import drylap.windowschedule.Draft;
import drylap.windowschedule.Field;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** How a schedule is understood: the sheet, what each column holds, and what is said once for all rows. */
final class ScheduleUnderstood extends Div {
    private static final int ROWS_OFFERED = 60;

    private final transient Speech say;
    private final transient Consumer<Draft> change;
    private final UnorderedList ofTheFile = new UnorderedList();
    private final Div sheetAndHeader = new Div();
    private final Div columns = new Div();
    private final ScheduleChoices choices;
    private transient @Nullable Draft draft;
    private transient @Nullable JobFolder folder;

    ScheduleUnderstood(Speech say, Consumer<Draft> change) {
        this.say = say;
        this.change = change;
        choices = new ScheduleChoices(say, now -> {
            if (draft != null) change.accept(draft.with(now));
        });
        sheetAndHeader.addClassName("asked");
        columns.addClassName("asked");
        Section panel = Panels.panel("understood", say.it("How it is understood"));
        var matched = new Details(
                say.it("Which column holds what"),
                new Paragraph(say.it("A column may be chosen for several.")),
                columns);
        panel.add(
                new Paragraph(
                        say.it(
                                "Columns were recognised by their titles. Change what was understood otherwise than it is meant.")),
                ofTheFile,
                sheetAndHeader,
                matched,
                choices);
        add(panel);
    }

    /** A file was opened. */
    void begin(JobFolder of, FileReading.Read file, Draft first) {
        ofTheFile.removeAll();
        file.understood().forEach(one -> ofTheFile.add(new ListItem(say.it(ScheduleSaid.read(one)))));
        ofTheFile.setVisible(!file.understood().isEmpty());
        begin(of, file.sheets(), first);
    }

    private void begin(JobFolder of, List<Sheet> sheets, Draft first) {
        folder = of;
        draft = first;
        Select<Sheet> sheet = ChangeFields.select(say.it("Sheet"));
        ChangeFields.fill(sheet, sheets, Sheet::name);
        sheet.setValue(first.sheet());
        sheet.addValueChangeListener(event -> {
            if (event.isFromClient()) turn(of, sheets, event.getValue(), null);
        });
        sheetAndHeader.removeAll();
        if (sheets.size() > 1) sheetAndHeader.add(sheet);
        sheetAndHeader.add(header(of, sheets, first));
        askColumns(first);
        choices.begin(of, first);
    }

    private Select<Integer> header(JobFolder of, List<Sheet> sheets, Draft first) {
        Select<Integer> header = ChangeFields.select(say.it("Last row of the titles"));
        List<Sheet.Row> rows = first.sheet().rows();
        List<Integer> places =
                IntStream.range(0, Math.min(ROWS_OFFERED, rows.size())).boxed().toList();
        ChangeFields.fill(
                header,
                places,
                place -> say.it(
                        "row {0}: {1}", rows.get(place).number(), ScheduleWords.asItStands(say, rows.get(place))));
        header.setValue(first.header().below() - 1);
        header.addValueChangeListener(event -> {
            if (event.isFromClient()) turn(of, sheets, first.sheet(), event.getValue());
        });
        return header;
    }

    /** Another sheet, or other titles: what was put right in rows is asked anew, what was said for all stays. */
    private void turn(JobFolder of, List<Sheet> sheets, Sheet sheet, @Nullable Integer lastTitle) {
        if (draft == null) return;
        Header header = lastTitle == null
                ? Header.find(sheet).orElseGet(() -> Header.at(sheet, 0, 1))
                : Header.at(sheet, Math.max(0, lastTitle - 1), lastTitle == 0 ? 1 : 2);
        Header one = lastTitle == null ? header : Header.at(sheet, lastTitle, 1);
        Draft now = Draft.of(
                draft.file(), sheet, one.columns().size() >= header.columns().size() ? one : header, draft.choices());
        begin(of, sheets, now);
        change.accept(now);
    }

    private void askColumns(Draft first) {
        columns.removeAll();
        List<Optional<Integer>> items = IntStream.rangeClosed(
                        -1, first.header().titles().size() - 1)
                .mapToObj(column -> column < 0 ? Optional.<Integer>empty() : Optional.of(column))
                .toList();
        Field.all().forEach(field -> {
            Select<Optional<Integer>> column = ChangeFields.select(say.it(field.words()));
            ChangeFields.fill(
                    column,
                    items,
                    item -> item.map(at -> ScheduleWords.column(say, first.header(), at))
                            .orElse(say.it("not in this file")));
            column.setValue(Optional.ofNullable(first.columns().get(field)));
            column.addValueChangeListener(event -> {
                if (event.isFromClient() && draft != null)
                    change.accept(draft.withColumn(field, event.getValue().orElse(null)));
            });
            columns.add(column);
        });
    }

    void show(Draft now) {
        draft = now;
        if (folder != null) choices.show(folder, now);
    }
}
