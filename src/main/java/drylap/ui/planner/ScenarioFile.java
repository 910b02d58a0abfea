package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.FolderShown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a file of scenarios, whole or not at all. */
final class ScenarioFile extends Div {
    private static final int LARGEST_BYTES = 1 << 20;

    private final transient Speech say;
    private final transient WhatIfDesk desk;
    private final transient Runnable after;
    private final Div outcome = new Div();
    private transient @Nullable FolderShown shown;

    ScenarioFile(Speech say, WhatIfDesk desk, Runnable after) {
        this.say = say;
        this.desk = desk;
        this.after = after;
        var upload = new Upload(Uploads.inMemory(LARGEST_BYTES, this::read));
        upload.setAcceptedFileTypes(".csv");
        upload.setMaxFiles(1);
        upload.setMaxFileSize(LARGEST_BYTES);
        upload.setUploadButton(new Button(say.it("Choose a CSV file")));
        upload.setI18n(UploadWords.file(say, ".csv"));
        outcome.getElement().setAttribute("role", "status");
        add(
                new Details(
                        say.it("Or a file of scenarios"),
                        new Paragraph(say.it(
                                "One change a row, as for the command {0}; rows of the same name are "
                                        + "one scenario. It takes the place of the scenarios so far.",
                                "\"drylap whatif\"")),
                        upload),
                outcome);
    }

    void show(FolderShown now) {
        shown = now;
    }

    /** Called with the page locked, once the file has come. */
    void read(String name, byte[] bytes) {
        FolderShown now = shown;
        if (now == null) return;
        List<Saying> wrong = desk.read(now, name, bytes);
        Panels.tell(say, outcome, name, wrong);
        if (wrong.isEmpty()) after.run();
    }
}
