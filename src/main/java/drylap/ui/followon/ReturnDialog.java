package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.upload.Upload;
import drylap.handoff.HandoffResult;
import drylap.handoff.ReturnReason;
import drylap.kernel.FolderId;
import drylap.progress.Photos;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.components.UploadWords;
import drylap.ui.components.Uploads;
import drylap.ui.drawn.ApronSheet;
import drylap.ui.followon.ReturnCounter.Picture;
import drylap.ui.followon.ReturnCounter.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;

/** Asks why an opening is returned, from where it is to be redone, and for photos of it. */
final class ReturnDialog extends Dialog {
    private static final int MOST_PHOTOS = 4;

    private final transient Speech say;
    private final transient ApronSheet sheet;
    private final transient FolderId folder;
    private final transient ReturnCounter counter;
    private final transient SignedIn signedIn;
    private final transient Consumer<HandoffResult> outcome;
    private final transient List<Picture> pictures = new ArrayList<>();
    private final UUID key = UUID.randomUUID();
    private final Select<ReturnReason> reason = new Select<>();
    private final Select<ApronSheet.Redo> redo = new Select<>();
    private final TextArea note = new TextArea();
    private final Paragraph trouble = new Paragraph();

    ReturnDialog(
            Speech say,
            ApronSheet sheet,
            FolderId folder,
            ReturnCounter counter,
            SignedIn signedIn,
            Consumer<HandoffResult> outcome) {
        this.say = say;
        this.sheet = sheet;
        this.folder = folder;
        this.counter = counter;
        this.signedIn = signedIn;
        this.outcome = outcome;
        setHeaderTitle(say.it("Return {0}", sheet.opening()));
        ask();
        trouble.addClassName("alarm");
        trouble.getElement().setAttribute("role", "alert");
        var fields = new Div(reason, redo, note, upload(), trouble);
        fields.addClassName("fields");
        add(fields);
        buttons();
    }

    private void ask() {
        reason.setLabel(say.it("Why"));
        reason.addClassName("why");
        reason.setItems(ReturnReason.values());
        reason.setItemLabelGenerator(one -> say.it(one.words()));
        reason.setRequiredIndicatorVisible(true);
        redo.setLabel(say.it("Redo from"));
        redo.setEmptySelectionAllowed(true);
        redo.setEmptySelectionCaption(say.it("as the reason has it"));
        redo.setItems(sheet.redo());
        redo.setItemLabelGenerator(line -> line == null ? say.it("as the reason has it") : line.text());
        note.setLabel(say.it("What is wrong, in your words"));
        note.setMaxLength(2_000);
    }

    private Upload upload() {
        var upload = new Upload(Uploads.inMemory(
                Photos.MOST_BYTES, (name, content) -> pictures.add(new Picture(UUID.randomUUID(), name, content))));
        upload.setAcceptedFileTypes("image/jpeg", "image/png", "image/webp");
        upload.setMaxFiles(MOST_PHOTOS);
        upload.setMaxFileSize(Photos.MOST_BYTES);
        upload.setUploadButton(new Button(say.it("Add a photo")));
        upload.setI18n(UploadWords.photos(say));
        upload.setDropAllowed(false);
        upload.getElement().setProperty("capture", "environment");
        upload.addFileRejectedListener(event -> tell("%s: %s".formatted(event.getFileName(), event.getErrorMessage())));
        upload.addFileRemovedListener(
                event -> pictures.removeIf(picture -> picture.name().equals(event.getFileName())));
        return upload;
    }

    private void buttons() {
        var back = new Button(say.it("Return {0}", sheet.opening()), _ -> giveBack());
        back.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Keep it"), _ -> close()), back);
    }

    private void giveBack() {
        if (reason.getValue() == null) {
            tell(say.it("Choose why it is returned."));
            return;
        }
        try {
            outcome.accept(counter.giveBack(signedIn.person(), folder, sheet, said()));
            close();
        } catch (IllegalArgumentException unfit) {
            tell(say.it(Unfit.saying(unfit)));
        }
    }

    private Said said() {
        var from = redo.getValue();
        return new Said(
                key, reason.getValue(), from == null ? null : from.code(), note.getValue(), List.copyOf(pictures));
    }

    private void tell(String words) {
        trouble.setText(words);
    }
}
