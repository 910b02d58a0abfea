package drylap.ui.windowcrew;

import drylap.kernel.CrewId;
import drylap.papers.Paper;
import drylap.security.SignedIn;
import drylap.ui.shell.Address;
import drylap.ui.shell.PaperSpeech;
import drylap.ui.shell.PdfAnswer;
import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Gives the paper of a crew's day to whoever may look at that day. */
@RestController
final class CrewDayPaperController {
    private final PaperDesk desk;
    private final SignedIn signedIn;
    private final Address address;

    CrewDayPaperController(PaperDesk desk, SignedIn signedIn, Address address) {
        this.desk = desk;
        this.signedIn = signedIn;
        this.address = address;
    }

    /** What is not there, not theirs, or no such day or paper is answered alike. */
    @GetMapping("/papers/crew-day.pdf")
    ResponseEntity<byte[]> day(
            @RequestParam String crew,
            @RequestParam String date,
            @RequestParam String paper,
            @RequestParam(required = false) @Nullable String language,
            HttpServletRequest request) {
        var day = date(date);
        var size = Paper.inHand(paper);
        if (crew.isBlank() || day.isEmpty() || size.isEmpty()) return PdfAnswer.none();
        return signedIn.find()
                .flatMap(who -> desk.day(
                        who,
                        PaperSpeech.of(who, language),
                        new CrewId(crew),
                        day.get(),
                        size.get(),
                        address.of(request)))
                .map(pdf -> PdfAnswer.of(pdf, "crew-day-%s".formatted(day.get())))
                .orElseGet(PdfAnswer::none);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }
}
