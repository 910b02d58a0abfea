package drylap.ui.followon;

import drylap.papers.Paper;
import drylap.papers.RecordPaper;
import drylap.security.SignedIn;
import drylap.ui.shell.Address;
import drylap.ui.shell.PaperSpeech;
import drylap.ui.shell.PdfAnswer;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Gives a hand-over record on paper to those who may see it. */
@RestController
final class RecordPaperController {
    private final RecordPaperDesk desk;
    private final SignedIn signedIn;
    private final Address address;

    RecordPaperController(RecordPaperDesk desk, SignedIn signedIn, Address address) {
        this.desk = desk;
        this.signedIn = signedIn;
        this.address = address;
    }

    /** What is not there, not theirs, or no such paper is answered alike. */
    @GetMapping("/papers/record.pdf")
    ResponseEntity<byte[]> record(
            @RequestParam long id,
            @RequestParam String paper,
            @RequestParam(required = false) @Nullable String language,
            HttpServletRequest request) {
        var size = Paper.inHand(paper);
        if (size.isEmpty()) return PdfAnswer.none();
        return signedIn.find()
                .flatMap(who -> desk.sheet(PaperSpeech.reader(who, language), id, address.of(request)))
                .map(sheet -> PdfAnswer.of(RecordPaper.pdf(sheet, size.get()), "hand-over-record-%d".formatted(id)))
                .orElseGet(PdfAnswer::none);
    }
}
