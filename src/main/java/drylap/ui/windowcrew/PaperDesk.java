package drylap.ui.windowcrew;

import drylap.handoff.HoldPoints;
import drylap.kernel.CrewId;
import drylap.papers.CrewDayPaper;
import drylap.papers.Paper;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.takeoff.CutList;
import drylap.takeoff.Supplies;
import drylap.ui.drawn.DayPaperPresenter;
import drylap.ui.drawn.FolderShown;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Prints a crew's day, for those who may look at it. */
@Component
class PaperDesk {
    private final CrewDesk desk;
    private final HoldPoints holdPoints;
    private final Clock clock;

    PaperDesk(CrewDesk desk, HoldPoints holdPoints, Clock clock) {
        this.desk = desk;
        this.holdPoints = holdPoints;
        this.clock = clock;
    }

    /** Nothing where no plan is published, or the crew is not one whose day this person may look at. */
    Optional<byte[]> day(Person who, Speech say, CrewId crew, LocalDate date, Paper paper, String address) {
        if (!who.may(Operation.SEE_CREW_DAY)) return Optional.empty();
        return desk.shown(who)
                .filter(shown -> desk.crews(who, shown).contains(crew))
                .map(shown -> DayPaperPresenter.sheet(
                        say,
                        shown,
                        crew,
                        date,
                        clock.instant(),
                        address,
                        site -> holdPoints.at(shown.stored().id(), site),
                        load(say, shown, crew, date)))
                .map(sheet -> CrewDayPaper.pdf(sheet, paper));
    }

    private List<String> load(Speech say, FolderShown shown, CrewId crew, LocalDate date) {
        try {
            return desk.load(shown, crew, date)
                    .map(list -> paragraphs(say, list.supplies()))
                    .orElse(List.of());
        } catch (IllegalArgumentException unknown) {
            return List.of(say.it("What to load cannot be said: {0}", Unfit.saying(unknown)));
        }
    }

    private static List<String> paragraphs(Speech say, Supplies load) {
        List<String> paragraphs = new ArrayList<>(List.of(
                say.it(load.sums().counts()), say.it("Strips: {0}", load.sums().lengths())));
        for (CutList cut : load.cuts()) {
            paragraphs.add(say.it(cut.saying()));
            for (int i = 0; i < cut.rolls().size(); i++)
                paragraphs.add(say.it("Roll {0}: {1}", i + 1, cut.rolls().get(i).saying()));
        }
        load.joints().forEach(how -> paragraphs.add(say.it(how)));
        paragraphs.add(say.it(Supplies.FIRST));
        return paragraphs;
    }
}
