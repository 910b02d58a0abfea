package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AttachmentType;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.TroubleLine;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.ScheduleFiles;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Templates;
import java.io.ByteArrayInputStream;

/** Asks for the site and the file. */
final class ScheduleIntake extends Div {
    /** What is done with a file that could be opened. */
    interface Opened {
        void begin(FileReading.Read file, Site site);
    }

    private final transient Speech say;
    private final transient ScheduleDesk desk;
    private final transient Opened opened;
    private final Select<Site> sites = new Select<>();
    private final TroubleLine trouble = new TroubleLine();

    ScheduleIntake(Speech say, ScheduleDesk desk, Opened opened) {
        this.say = say;
        sites.setLabel(say.it("Site"));
        this.desk = desk;
        this.opened = opened;
        Section panel = Panels.panel("schedule-file", say.it("Openings from a window schedule"));
        var upload = new Upload(Uploads.inMemory(ScheduleFiles.MOST_BYTES, this::read));
        upload.setAcceptedFileTypes(".xlsx", ".csv", ".txt", ".tsv", ".ifc");
        upload.setI18n(UploadWords.file(say, "XLSX, CSV, TXT, TSV, IFC"));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(ScheduleFiles.MOST_BYTES);
        upload.setUploadButton(new Button(say.it("Choose a window schedule or a building model")));
        var choose = new Div(sites, upload);
        choose.addClassName("asked");
        panel.add(
                new Paragraph(
                        say.it(
                                "The contractor's window schedule as XLSX or CSV, or the building model as IFC, for one site of the job folder on the table. You see first what "
                                        + "every row becomes, and put right what is wrong. It is taken in whole, or not at all.")),
                choose,
                trouble,
                templates());
        add(panel);
    }

    private Paragraph templates() {
        var said = new Paragraph(say.it("Or begin with an empty schedule:") + " ");
        for (var template : Templates.all())
            said.add(
                    new Anchor(
                            DownloadHandler.fromInputStream(_ -> new DownloadResponse(
                                    new ByteArrayInputStream(template.bytes()),
                                    template.name(),
                                    template.type(),
                                    template.bytes().length)),
                            AttachmentType.DOWNLOAD,
                            template.name()),
                    Panels.text(" "));
        return said;
    }

    void offer(FolderShown shown) {
        trouble.clear();
        ChangeFields.fill(sites, desk.sites(shown), Site::name);
    }

    /** Called with the page locked, once the file has come. */
    void read(String name, byte[] bytes) {
        trouble.clear();
        if (sites.isEmpty()) {
            trouble.say(say.it("Choose a site first."));
            return;
        }
        switch (desk.open(sites.getValue().id(), name, bytes)) {
            case FileReading.Refused refused -> trouble.say(refusal(refused));
            case FileReading.Read read -> opened.begin(read, sites.getValue());
        }
    }

    private String refusal(FileReading.Refused refused) {
        String of = refused.where().isEmpty()
                ? refused.file()
                : say.it("{0}, {1}", refused.file(), ScheduleSaid.read(refused.where()));
        return say.it(
                "{0}: {1} – {2} is accepted. Nothing was changed.",
                of, ScheduleSaid.read(refused.wrong()), ScheduleSaid.read(refused.accepted()));
    }
}
