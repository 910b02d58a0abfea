package drylap.ui.components;

import com.vaadin.flow.component.upload.UploadI18N;
import drylap.speech.Speech;
import java.util.List;

/** What Vaadin's own field for files says. */
public final class UploadWords {
    private UploadWords() {}

    public static UploadI18N photos(Speech say) {
        return common(say)
                .setAddFiles(
                        new UploadI18N.AddFiles().setOne(say.it("Add a photo")).setMany(say.it("Add a photo")))
                .setError(new UploadI18N.Error()
                        .setTooManyFiles(say.it("Too many photos."))
                        .setFileIsTooBig(say.it("The photo is too large."))
                        .setIncorrectFileType(say.it("The file is no photo. Accepted: JPEG, PNG, WebP.")));
    }

    /** @param accepted the endings of file names that are accepted */
    public static UploadI18N file(Speech say, String accepted) {
        String drop = say.it("Drop file here");
        return common(say)
                .setDropFiles(new UploadI18N.DropFiles().setOne(drop).setMany(drop))
                .setError(new UploadI18N.Error()
                        .setTooManyFiles(say.it("One file at a time."))
                        .setFileIsTooBig(say.it("The file is too large."))
                        .setIncorrectFileType(say.it("The file is of another kind. Accepted: {0}.", accepted)));
    }

    private static UploadI18N common(Speech say) {
        return new UploadI18N()
                .setUploading(new UploadI18N.Uploading()
                        .setStatus(new UploadI18N.Uploading.Status()
                                .setConnecting(say.it("Connecting…"))
                                .setStalled(say.it("Held up"))
                                .setProcessing(say.it("Being worked on…"))
                                .setHeld(say.it("Waits")))
                        .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                                .setPrefix(say.it("time left:") + " ")
                                .setUnknown(say.it("time left is not known")))
                        .setError(new UploadI18N.Uploading.Error()
                                .setServerUnavailable(say.it("No connection. Try again later."))
                                .setUnexpectedServerError(say.it("The server has trouble. Try again later."))
                                .setForbidden(say.it("This is not yours, or there is no such thing."))))
                .setFile(new UploadI18N.File()
                        .setRetry(say.it("Try again"))
                        .setStart(say.it("Begin"))
                        .setRemove(say.it("Remove")))
                .setUnits(List.of("B", "kB", "MB"), 1000);
    }
}
