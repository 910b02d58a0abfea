package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.OpeningId;
import drylap.planning.ScheduleResult;
import drylap.planning.StoredFolder;
import drylap.security.Operation;
import drylap.sites.Site;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ScheduleWords;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.TroubleLine;
import drylap.windowschedule.Draft;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Sheet;
import drylap.windowschedule.Starts;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Takes openings in from a contractor's window schedule: shown first, put right in place, taken in whole or not at all. */
@Route("window-schedule")
@Needs(Operation.IMPORT_FOLDER)
@PageTitle("Window schedule · Drylap")
@CssImport("./window-schedule.css")
class WindowScheduleView extends Div implements FolderView {
    private final transient ScheduleDesk desk;
    private final transient Desk table;
    private final ScheduleIntake intake;
    private final ScheduleUnderstood understood = new ScheduleUnderstood(this::change);
    private final ScheduleFaults faults = new ScheduleFaults(this::change);
    private final ScheduleOpenings openings = new ScheduleOpenings(this::change);
    private final Section end = Panels.panel("schedule-end", "Take it in");
    private final Paragraph counts = new Paragraph();
    private final UnorderedList lacking = new UnorderedList();
    private final Button take = new Button("Take the openings in", _ -> take());
    private final TroubleLine trouble = new TroubleLine();
    private final Div taken = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable StoredFolder folder;
    private transient @Nullable Draft draft;
    private transient @Nullable Outcome outcome;
    private transient Set<OpeningId> begun = Set.of();

    WindowScheduleView(ScheduleDesk desk, Desk table) {
        this.desk = desk;
        this.table = table;
        intake = new ScheduleIntake(desk, this::begin);
        addClassName("window-schedule");
        counts.getElement().setAttribute("aria-live", "polite");
        taken.getElement().setAttribute("aria-live", "polite");
        take.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        end.add(counts, lacking, trouble, take);
        add(Panels.empty());
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
        counts.setText(ScheduleWords.counts(becomes));
        lacking.removeAll();
        becomes.lacking().forEach(one -> lacking.add(new ListItem(one)));
        take.setEnabled(becomes.sound());
    }

    private void take() {
        FolderShown now = shown;
        Draft mine = draft;
        Outcome becomes = outcome;
        if (now == null || mine == null || becomes == null || !becomes.sound()) return;
        switch (desk.take(now, mine, becomes)) {
            case ScheduleResult.Taken(int added, int changed) -> taken(mine.file(), added, changed);
            case ScheduleResult.Refused(var why) -> trouble.say(why);
            case ScheduleResult.ChangedMeanwhile(var what) -> {
                table.refresh();
                trouble.say(
                        "Somebody marked or changed %s meanwhile. Nothing was taken in. Look again, then take it in."
                                .formatted(what));
            }
        }
    }

    private void taken(String file, int added, int changed) {
        draft = null;
        outcome = null;
        draw();
        var panel = Panels.panel("taken", "%s was taken in".formatted(file));
        panel.add(
                new Paragraph(
                        "%,d openings are new, %,d were changed. What was marked, released, pinned and published stays as it was."
                                .formatted(added, changed)),
                new Paragraph(
                        Panels.text("Plan again, so that they get their visits. "),
                        new RouterLink("To the sites", SitesView.class)));
        taken.removeAll();
        taken.add(panel);
        table.refresh();
    }
}
