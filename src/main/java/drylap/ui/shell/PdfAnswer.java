package drylap.ui.shell;

import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** A paper as an answer; what is not there, not theirs, or asked for wrongly is answered alike. */
public final class PdfAnswer {
    private PdfAnswer() {}

    /** @param name of the file, letters and digits, without its ending */
    public static ResponseEntity<byte[]> of(byte[] pdf, String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .cacheControl(CacheControl.noStore())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(name + ".pdf")
                                .build()
                                .toString())
                .body(pdf);
    }

    public static ResponseEntity<byte[]> none() {
        return ResponseEntity.notFound().build();
    }
}
