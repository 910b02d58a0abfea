package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.OpeningId;
import drylap.planning.ScheduleResult;
import drylap.planning.StoredFolder;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ScheduleWords;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import drylap.ui.shell.TroubleLine;
import drylap.windowschedule.Draft;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import drylap.windowschedule.Starts;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Takes openings in from a contractor's window schedule: shown first, put right in place, taken in whole or not at all. */
@Route("window-schedule")
@Needs(Operation.IMPORT_FOLDER)
@CssImport("./window-schedule.css")
class WindowScheduleView extends Div implements FolderView, Spoken {
    private final transient Speech say;
    private final transient ScheduleDesk desk;
    private final transient Desk table;
    private final ScheduleIntake intake;
    private final ScheduleUnderstood understood;
    private final ScheduleFaults faults;
    private final ScheduleOpenings openings;
    private final Section end;
    private final Paragraph counts = new Paragraph();
    private final UnorderedList lacking = new UnorderedList();
    private final Button take;
    private final TroubleLine trouble = new TroubleLine();
    private final Div taken = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable StoredFolder folder;
    private transient @Nullable Draft draft;
    private transient @Nullable Outcome outcome;
    private transient Set<OpeningId> begun = Set.of();

    WindowScheduleView(ScheduleDesk desk, Desk table, SignedIn signedIn) {
        this.desk = desk;
        this.table = table;
        say = new Speech(signedIn.person().reading());
        intake = new ScheduleIntake(say, desk, this::begin);
        understood = new ScheduleUnderstood(say, this::change);
        faults = new ScheduleFaults(say, this::change);
        openings = new ScheduleOpenings(say, this::change);
        end = Panels.panel("schedule-end", say.it("Take it in"));
        take = new Button(say.it("Take the openings in"), _ -> take());
        addClassName("window-schedule");
        counts.getElement().setAttribute("aria-live", "polite");
        taken.getElement().setAttribute("aria-live", "polite");
        take.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        end.add(counts, lacking, trouble, take);
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Window schedule");
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        if (now.stored().id().equals(folder == null ? null : folder.id())) {
            if (draft == null) return;
            begun = desk.begun(now.stored().id());
            change(draft);
            return;
        }
        folder = now.stored();
        draft = null;
        removeAll();
        taken.removeAll();
        intake.offer(now);
        add(intake, taken, understood, faults, openings, end);
        draw();
    }

    /** A file was opened: what it becomes is shown. */
    private void begin(FileReading.Read file, Site site) {
        FolderShown now = shown;
        if (now == null) return;
        taken.removeAll();
        trouble.clear();
        begun = desk.begun(now.stored().id());
        List<Sheet> sheets = file.sheets();
        Sheet sheet = sheets.stream()
                .filter(one -> Header.find(one).isPresent())
                .findFirst()
                .orElse(sheets.getFirst());
        Header header = Header.find(sheet).orElseGet(() -> Header.at(sheet, 0, 1));
        draft = Draft.of(file.file(), sheet, header, Starts.of(now.folder(), site.id()));
        understood.begin(now.folder(), file, draft);
        faults.begin();
        change(draft);
    }

    private void change(Draft now) {
        FolderShown at = shown;
        if (at == null) return;
        draft = now;
        outcome = desk.outcome(at, now, begun);
        trouble.clear();
        draw();
    }

    private void draw() {
        Draft now = draft;
        Outcome becomes = outcome;
        boolean open = now != null && becomes != null;
        understood.setVisible(open);
        faults.setVisible(open);
        openings.setVisible(open);
        end.setVisible(open);
        if (now == null || becomes == null) return;
        understood.show(now);
        faults.show(now, becomes);
        openings.show(now, becomes);
        counts.setText(ScheduleWords.counts(say, becomes));
        lacking.removeAll();
        becomes.lacking().forEach(one -> lacking.add(new ListItem(say.it(ScheduleSaid.read(one)))));
        take.setEnabled(becomes.sound());
    }

    private void take() {
        FolderShown now = shown;
        Draft mine = draft;
        Outcome becomes = outcome;
        if (now == null || mine == null || becomes == null || !becomes.sound()) return;
        switch (desk.take(now, mine, becomes)) {
            case ScheduleResult.Taken(int added, int changed) -> taken(mine.file(), added, changed);
            case ScheduleResult.Refused(var why) -> trouble.say(say.it(why));
            case ScheduleResult.ChangedMeanwhile(var what) -> {
                table.refresh();
                trouble.say(say.it(
                        "Somebody marked or changed {0} meanwhile. Nothing was taken in. Look again, then take it in.",
                        what));
            }
        }
    }

    private void taken(String file, int added, int changed) {
        draft = null;
        outcome = null;
        draw();
        var panel = Panels.panel("taken", say.it("{0} was taken in", file));
        panel.add(
                new Paragraph(say.it(
                        "{0} openings are new, {1} were changed. What was marked, released, pinned and published stays as it was.",
                        ScheduleWords.many(added), ScheduleWords.many(changed))),
                new Paragraph(
                        Panels.text(say.it("Plan again, so that they get their visits.") + " "),
                        new RouterLink(say.it("To the sites"), SitesView.class)));
        taken.removeAll();
        taken.add(panel);
        table.refresh();
    }
}
