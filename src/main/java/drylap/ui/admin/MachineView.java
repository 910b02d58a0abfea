package drylap.ui.admin;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.forecasts.SourceAges.Age;
import drylap.platform.JobStatus;
import drylap.platform.WorkState.Line;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.MachineSheet;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Jobs, forecasts, the planner, room: whether all is well, and what to do where it is not. */
@Route("how-it-runs")
@Menu(title = "How it runs", order = 95)
@Needs(Operation.SEE_MACHINE)
class MachineView extends Div implements Spoken {
    private static final ZoneId ZONE = ZoneId.systemDefault();

    private final transient MachineDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;

    MachineView(MachineDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        addClassNames("machine-view", "programs-view");
        Live.everyMinute(this, this::show);
        show();
    }

    @Override
    public String called() {
        return say.it("How it runs");
    }

    private void show() {
        var sheet = desk.sheet(signedIn.person());
        removeAll();
        add(state(sheet), jobs(sheet.jobs()), sources(sheet.sources()));
    }

    private Section state(MachineSheet sheet) {
        var panel = Panels.panel("machine-state", say.it("Is all well?"));
        if (sheet.wrong().isEmpty()) panel.add(new Paragraph(say.it("Nothing is wrong that Drylap knows of.")));
        sheet.wrong().forEach(one -> panel.add(trouble(say.it(one))));
        panel.add(list(sheet.facts()));
        return panel;
    }

    private UnorderedList list(List<Saying> lines) {
        return new UnorderedList(lines.stream().map(say::it).map(ListItem::new).toArray(ListItem[]::new));
    }

    private Section jobs(List<Line> jobs) {
        String what = say.it("Jobs");
        var panel = Panels.panel("machine-jobs", what);
        NativeTable table = Panels.table(
                say.it("Job"),
                say.it("What"),
                say.it("State"),
                say.it("Asked for"),
                say.it("Node"),
                say.it("Last sign of life"),
                say.it("Why it failed"));
        jobs.forEach(job -> Panels.row(
                table,
                Panels.figure(Long.toString(job.id())),
                Panels.text(kind(job.kind())),
                Panels.text(state(job.status())),
                time(job.askedAt()),
                Panels.text(job.node() == null ? "" : job.node()),
                time(job.heartbeat()),
                Panels.text(job.failure() == null ? "" : job.failure())));
        if (jobs.isEmpty()) panel.add(new Paragraph(say.it("No job waits, runs or failed this week.")));
        else panel.add(table, new SpreadsheetLink(say, "Drylap", what, table));
        return panel;
    }

    private Section sources(List<Age> sources) {
        String what = say.it("Sources of forecasts");
        var panel = Panels.panel("machine-sources", what);
        NativeTable table =
                Panels.table(say.it("Source"), say.it("Sites"), say.it("Failing"), say.it("Newest forecast"));
        sources.forEach(age -> Panels.row(
                table,
                Panels.text(age.source().words()),
                Panels.figure(Integer.toString(age.sites())),
                Panels.figure(Integer.toString(age.failing())),
                time(age.newest())));
        if (sources.isEmpty())
            panel.add(new Paragraph(say.it("Every site is planned by the forecast of its job folder.")));
        else panel.add(table, new SpreadsheetLink(say, "Drylap", what, table));
        return panel;
    }

    private static Paragraph trouble(String words) {
        var line = new Paragraph(words);
        line.addClassName("trouble");
        return line;
    }

    private Span time(@Nullable Instant at) {
        return at == null ? Panels.text("") : Panels.time(say.moment(at, ZONE), LocalDateTime.ofInstant(at, ZONE));
    }

    private String state(JobStatus status) {
        return switch (status) {
            case QUEUED -> say.it("waits");
            case RUNNING -> say.it("runs");
            case FAILED -> say.it("failed");
            case DONE, STOPPED -> say.it("ended");
        };
    }

    private String kind(String kind) {
        return switch (kind) {
            case "plan" -> say.it("a plan");
            case "forecast" -> say.it("a forecast");
            case "odds" -> say.it("the odds of a plan");
            default -> kind;
        };
    }
}
