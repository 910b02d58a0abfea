package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.spring.annotation.SpringComponent;
import drylap.kernel.Reach;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.BrokenVisits;
import drylap.ui.drawn.BrokenVisits.Row;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Scope;

/** What the day has broken of the plan that people work by; nothing at all where it holds. */
@SpringComponent
@Scope("prototype")
final class BrokenPanel extends Div {
    private final transient BreaksDesk desk;
    private final transient Reach reach;
    private final transient Speech say;
    /** What is to be worked out next; a later folder takes the place of one that still waits. */
    private final transient AtomicReference<@Nullable FolderShown> asked = new AtomicReference<>();

    private boolean working;
    private transient @Nullable BrokenVisits drawn;

    BrokenPanel(BreaksDesk desk, SignedIn signedIn) {
        this.desk = desk;
        reach = signedIn.person().reach();
        say = new Speech(signedIn.reading());
        setVisible(false);
    }

    /** Draws what is at hand; the rest follows once it is worked out, so that no page waits for it. */
    void show(FolderShown shown) {
        var atHand = desk.atHand(say, shown, reach);
        if (atHand.isPresent()) {
            asked.set(null);
            draw(shown.name(), atHand.get());
            return;
        }
        if (drawn == null) desk.lately(say, shown, reach).ifPresent(one -> draw(shown.name(), one));
        asked.set(shown);
        getElement().getNode().runWhenAttached(this::begin);
    }

    private void begin(UI ui) {
        if (working) return;
        working = true;
        Thread.startVirtualThread(() -> work(ui));
    }

    private void work(UI ui) {
        try {
            desk.rest();
            FolderShown next = asked.getAndSet(null);
            var broken = next == null ? Optional.<BrokenVisits>empty() : desk.workOut(say, next, reach);
            ui.access(() -> {
                working = false;
                if (next != null)
                    broken.or(() -> desk.lately(say, next, reach)).ifPresent(one -> draw(next.name(), one));
                // where others came first it has to wait once more
                if (next != null && broken.isEmpty()) asked.compareAndSet(null, next);
                if (asked.get() != null) begin(ui);
            });
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (UIDetachedException gone) {
            // whoever left does not need it any more
        }
    }

    private void draw(String where, BrokenVisits broken) {
        if (broken.equals(drawn)) return;
        drawn = broken;
        removeAll();
        setVisible(!broken.rows().isEmpty());
        if (broken.rows().isEmpty()) return;
        int many = broken.rows().size();
        var panel = Panels.panel(
                "broken", say.it("Broken since it was published: {0, plural, one {# visit} other {# visits}}", many));
        panel.add(new Paragraph(
                say.it("The published plan cannot be kept here as things stand. Plan again, or move these visits.")));
        NativeTable table = Panels.table(
                say.it("Opening"), say.it("Task"), say.it("Published for"), say.it("Why it does not hold"));
        String all = say.it("Show all {0} broken visits", many);
        panel.add(
                new LongTable(say, all, table, broken.rows(), row -> line(table, row)),
                new SpreadsheetLink(say, where, say.it("Broken visits"), () -> whole(broken.rows())));
        add(panel);
    }

    /** All of them, with time and crew apart. */
    private NativeTable whole(List<Row> rows) {
        NativeTable table = Panels.table(
                say.it("Opening"),
                say.it("Task"),
                say.it("Published for"),
                say.it("Crew"),
                say.it("Why it does not hold"));
        for (Row row : rows) {
            var task = row.task();
            var time = row.time();
            var opening = row.opening();
            Panels.row(
                    table,
                    Panels.text(opening == null ? "" : opening.value()),
                    Panels.text(say.it(task == null ? "a crew's day" : Words.task(task))),
                    Panels.time(row.when(), time == null ? null : time.start()),
                    Panels.text(time == null ? "" : time.crew()),
                    Panels.text(row.why()));
        }
        return table;
    }

    private void line(NativeTable table, Row row) {
        var task = row.task();
        Panels.row(
                table,
                row.opening() == null ? Panels.text("") : WallsView.link(Objects.requireNonNull(row.opening())),
                task == null
                        ? Panels.text(say.it("a crew's day"))
                        : new Span(Panels.mark(task.code()), Panels.text(say.it(Words.task(task)))),
                Panels.text(row.when()),
                Panels.text(row.why()));
    }
}
