package drylap.ui.drawn;

import drylap.papers.SuppliesSheet;
import drylap.papers.SuppliesSheet.Line;
import drylap.papers.SuppliesSheet.Stock;
import drylap.speech.Speech;
import drylap.takeoff.CutList;
import drylap.takeoff.Sums;
import drylap.takeoff.Supplies;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;

/** What a take-off says on paper; by the ruler of whoever prints it. */
public final class TakeOffPaperPresenter {
    private final Speech say;

    private TakeOffPaperPresenter(Speech say) {
        this.say = say;
    }

    public static SuppliesSheet sheet(Speech say, FolderShown shown, TakeOffSheet sheet, Instant now) {
        return new TakeOffPaperPresenter(say).sheet(shown, sheet, now);
    }

    private SuppliesSheet sheet(FolderShown shown, TakeOffSheet sheet, Instant now) {
        ZoneId zone = shown.folder().sites().getFirst().zone();
        Supplies supplies = sheet.supplies();
        return new SuppliesSheet(
                say,
                say.it("Take-off: {0}", sheet.title()),
                say.it(
                        "Printed {0}. What is put on, planned anew or measured later is not on this paper.",
                        say.moment(now, zone)),
                List.of(
                        say.it(supplies.sums().counts()),
                        say.it("Strips: {0}", supplies.sums().lengths())),
                sheet.shares().size() < 2
                        ? List.of()
                        : sheet.shares().stream()
                                .map(share -> new Line(share.name(), share(share.sums())))
                                .toList(),
                supplies.cuts().stream().map(this::stock).toList(),
                Stream.concat(supplies.joints().stream().map(say::it), Stream.of(say.it(Supplies.FIRST)))
                        .toList());
    }

    private String share(Sums sums) {
        return sums.isEmpty()
                ? say.it("nothing is left to put on")
                : "%s; %s".formatted(say.it(sums.counts()), say.it(sums.lengths()));
    }

    private Stock stock(CutList cut) {
        return new Stock(
                say.it(cut.saying()),
                cut.cuts().stream().map(one -> say.it(one.cut())).toList(),
                cut.alike().stream()
                        .map(rolls -> new Line(say.it(rolls.name()), say.it(rolls.saying())))
                        .toList());
    }
}
