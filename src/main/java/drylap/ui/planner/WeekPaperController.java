package drylap.ui.planner;

import drylap.kernel.FolderId;
import drylap.papers.Paper;
import drylap.papers.WeekPaper;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.ui.drawn.WeekChoice;
import drylap.ui.drawn.WeekPaperPresenter;
import drylap.ui.shell.Address;
import drylap.ui.shell.PaperSpeech;
import drylap.ui.shell.PdfAnswer;
import drylap.ui.shell.ShownFolders;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Gives the week sheet on a large paper to those who may look at it, as far as their sites go. */
@RestController
final class WeekPaperController {
    private final ShownFolders folders;
    private final SignedIn signedIn;
    private final Address address;
    private final Clock clock;

    WeekPaperController(ShownFolders folders, SignedIn signedIn, Address address, Clock clock) {
        this.folders = folders;
        this.signedIn = signedIn;
        this.address = address;
        this.clock = clock;
    }

    /**
     * What is not there, not theirs, or no such paper is answered alike.
     *
     * @param published the plan that people work by instead of a newer proposal
     */
    @GetMapping("/papers/week.pdf")
    ResponseEntity<byte[]> week(
            @RequestParam long folder,
            @RequestParam boolean published,
            @RequestParam String paper,
            @RequestParam(required = false) @Nullable String language,
            @RequestParam MultiValueMap<String, String> all,
            HttpServletRequest request) {
        var size = Paper.onWall(paper);
        if (size.isEmpty()) return PdfAnswer.none();
        return signedIn.find()
                .filter(who -> who.may(Operation.SEE_WEEK_SHEET) && who.may(Operation.SEE_FOLDERS))
                .flatMap(who -> folders.find(who, new FolderId(folder), published)
                        .filter(shown -> !shown.folder().sites().isEmpty())
                        .map(shown -> WeekPaperPresenter.sheet(
                                PaperSpeech.of(who, language),
                                shown,
                                WeekChoice.of(all).within(shown),
                                clock.instant(),
                                address.of(request) + "/" + WeekSheetView.PATH)))
                .map(sheet -> PdfAnswer.of(WeekPaper.pdf(sheet, size.get()), "week-%s".formatted(paper)))
                .orElseGet(PdfAnswer::none);
    }
}
