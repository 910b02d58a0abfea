package drylap.ui.followon;

import drylap.kernel.Course;
import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.papers.Paper;
import drylap.papers.ReleasePaper;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.ui.drawn.ReleasePaperPresenter;
import drylap.ui.shell.PaperSpeech;
import drylap.ui.shell.PdfAnswer;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Gives the release sheet of a course to those who may see its aprons. */
@RestController
final class ReleasePaperController {
    private final AcceptanceDesk desk;
    private final SignedIn signedIn;
    private final Clock clock;

    ReleasePaperController(AcceptanceDesk desk, SignedIn signedIn, Clock clock) {
        this.desk = desk;
        this.signedIn = signedIn;
        this.clock = clock;
    }

    @GetMapping("/papers/release.pdf")
    ResponseEntity<byte[]> release(
            @RequestParam String site,
            @RequestParam String facade,
            @RequestParam int level,
            @RequestParam String paper,
            @RequestParam(required = false) @Nullable String language) {
        var size = Paper.inHand(paper);
        if (site.isBlank() || facade.isBlank() || size.isEmpty()) return PdfAnswer.none();
        var course = new Course(new FacadeId(new SiteId(site), facade), level);
        return signedIn.find()
                .filter(who -> who.may(Operation.SEE_APRONS))
                .flatMap(who -> desk.facts(who)
                        .flatMap(facts -> ReleasePaperPresenter.sheet(
                                facts, PaperSpeech.reader(who, language), course, clock.instant())))
                .map(sheet -> PdfAnswer.of(ReleasePaper.pdf(sheet, size.get()), "release-level-%d".formatted(level)))
                .orElseGet(PdfAnswer::none);
    }
}
