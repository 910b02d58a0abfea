package drylap.ui.planner;

import drylap.kernel.FolderId;
import drylap.papers.Paper;
import drylap.papers.SuppliesPaper;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.TakeOffChoice;
import drylap.ui.drawn.TakeOffPaperPresenter;
import drylap.ui.drawn.TakeOffSheet;
import drylap.ui.shell.PaperSpeech;
import drylap.ui.shell.PdfAnswer;
import drylap.ui.shell.ShownFolders;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Gives the take-off of a day or a site on paper to those who may look at it, as far as their sites go. */
@RestController
final class TakeOffPaperController {
    private final ShownFolders folders;
    private final SignedIn signedIn;
    private final Clock clock;

    TakeOffPaperController(ShownFolders folders, SignedIn signedIn, Clock clock) {
        this.folders = folders;
        this.signedIn = signedIn;
        this.clock = clock;
    }

    /**
     * What is not there, not theirs, or no such paper is answered alike.
     *
     * @param published the plan that people work by instead of a newer proposal
     */
    @GetMapping("/papers/take-off.pdf")
    ResponseEntity<byte[]> takeOff(
            @RequestParam long folder,
            @RequestParam boolean published,
            @RequestParam String paper,
            @RequestParam(required = false) @Nullable String language,
            @RequestParam MultiValueMap<String, String> all) {
        var size = Paper.inHand(paper);
        var choice = TakeOffChoice.of(all);
        if (size.isEmpty() || choice.isEmpty()) return PdfAnswer.none();
        return signedIn.find()
                .filter(who -> who.may(Operation.SEE_WEEK_SHEET) && who.may(Operation.SEE_FOLDERS))
                .flatMap(who -> folders.find(who, new FolderId(folder), published)
                        .flatMap(shown -> pdf(PaperSpeech.of(who, language), shown, choice.get(), size.get())))
                .map(pdf -> PdfAnswer.of(pdf, "take-off"))
                .orElseGet(PdfAnswer::none);
    }

    private Optional<byte[]> pdf(Speech say, FolderShown shown, TakeOffChoice choice, Paper paper) {
        return sheet(say, shown, choice)
                .map(sheet -> TakeOffPaperPresenter.sheet(say, shown, sheet, clock.instant()))
                .map(sheet -> SuppliesPaper.pdf(sheet, paper));
    }

    private static Optional<TakeOffSheet> sheet(Speech say, FolderShown shown, TakeOffChoice choice) {
        try {
            return TakeOffSheet.of(say, shown, choice);
        } catch (IllegalArgumentException unknown) {
            return Optional.empty(); // the page says what the plan visits that the folder has not
        }
    }
}
