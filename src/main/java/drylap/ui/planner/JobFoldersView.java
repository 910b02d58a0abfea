package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.planning.StoredFolder;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.shell.Desk;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** Takes job folders in, and lists those that were. */
@Route("job-folders")
@Needs(Operation.SEE_FOLDERS)
@Menu(title = "Job folders", order = 4)
class JobFoldersView extends Div implements Spoken {
    private static final int LARGEST_BYTES = 64 << 20;

    private final Desk desk;
    private final transient Speech say;
    private final Div outcome = new Div();
    private final Div stored = new Div();

    JobFoldersView(Desk desk, SignedIn signedIn) {
        this.desk = desk;
        say = new Speech(signedIn.person().reading());
        addClassName("folders-view");
        outcome.getElement().setAttribute("aria-live", "polite");
        add(intake(), stored);
        listFolders();
    }

    @Override
    public String called() {
        return say.it("Job folders");
    }

    private Section intake() {
        var upload = new Upload(Uploads.inFile(LARGEST_BYTES, this::read));
        upload.setAcceptedFileTypes(".zip");
        upload.setI18n(UploadWords.file(say, "ZIP"));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(LARGEST_BYTES);
        upload.setUploadButton(new Button(say.it("Choose a zip file")));
        Section panel = Panels.panel("intake", say.it("Bring in a job folder"));
        panel.add(
                new Paragraph(say.it(
                        "A zip file with sites.csv, facades.csv, openings.csv, crews.csv, shifts.csv and labour.csv, "
                                + "and as wanted travel.csv, forecast.csv, rules.csv and published.csv. "
                                + "It is taken in whole, or not at all.")),
                upload,
                outcome,
                new RouterLink(say.it("Openings of a site from a window schedule"), WindowScheduleView.class));
        return panel;
    }

    /** Called with the page locked, once the file has come. */
    private void read(String name, Path file) throws IOException {
        outcome.removeAll();
        switch (reading(name, file)) {
            case FolderReading.Refused refused -> outcome.add(new RefusedPanel(say, name, refused));
            case FolderReading.Read read -> {
                desk.takeIn(name.replaceFirst("(?i)\\.zip$", ""), read.folder());
                listFolders();
                outcome.add(new TakenPanel(say, name, read.notes()));
            }
        }
    }

    private static FolderReading reading(String name, Path file) throws IOException {
        try {
            return FolderReader.read(FolderSource.zip(file, name));
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private void listFolders() {
        stored.removeAll();
        NativeTable table =
                Panels.table(say.it("Job folder"), say.it("Brought in"), say.it("Sites"), say.it("Openings"), "");
        desk.folders().forEach(folder -> row(table, folder));
        Section panel = Panels.panel("folders", say.it("Job folders so far"));
        panel.add(table, new SpreadsheetLink(say, "Drylap", say.it("Job folders"), table));
        stored.add(panel);
    }

    private void row(NativeTable table, StoredFolder folder) {
        var open = new Button(say.it("Lay on the table"), _ -> {
            desk.open(folder.id());
            UI.getCurrent().navigate(WeekSheetView.class);
        });
        open.setAriaLabel(say.it("Lay on the table: {0}", folder.name()));
        Panels.row(
                table,
                Panels.text(folder.name(), "strong"),
                Panels.time(
                        say.moment(folder.importedAt(), ZoneId.systemDefault()),
                        LocalDateTime.ofInstant(folder.importedAt(), ZoneId.systemDefault())),
                Panels.number(String.valueOf(folder.sites()), folder.sites(), ""),
                Panels.number(String.valueOf(folder.openings()), folder.openings(), ""),
                open);
    }
}
