package drylap.papers;

import drylap.assembly.AsBuilt;
import drylap.assembly.LapSection;
import drylap.assembly.StepList;
import drylap.assembly.Variant;
import drylap.assembly.WorkList;
import drylap.kernel.Trade;
import drylap.papers.Front.Part;
import drylap.speech.Speech;
import java.util.List;
import java.util.stream.IntStream;

/** Days for tests: so many visits at openings of every kind, with names that are hard to print. */
public final class DaySheets {
    static final String ODD_SITE =
            "Žižkov–Łódź Ünit Σ, «north; yard» with a name that goes on for longer than any line is wide";

    private DaySheets() {}

    public static DaySheet of(int visits) {
        return new DaySheet(
                Speech.ENGLISH,
                "Mon 13 Apr, crew W1",
                "By the plan published Sun 12 Apr 18:00; printed Mon 13 Apr 06:10.",
                List.of(
                        new DaySheet.Place(
                                "Quay Nine",
                                List.of("1 Invented Quay", "Sample Harbour"),
                                "Site Q, at 44.62000, -124.05000",
                                List.of("rough opening accepted")),
                        new DaySheet.Place(ODD_SITE, List.of(), "Site Ž, at 50.08000, 14.45000", List.of())),
                List.of("%d windows, 600 fasteners, 40 cartridges of sealant, 20 pan corners".formatted(visits)),
                IntStream.range(0, visits).mapToObj(DaySheets::stop).toList(),
                Variant.all().stream().limit(3).map(DaySheets::kind).toList());
    }

    private static DaySheet.Stop stop(int number) {
        var variants = Variant.all();
        var variant = variants.get(number % variants.size());
        return new DaySheet.Stop(
                "QW%d-%02d".formatted(number % 3, number),
                "%02d:15 to %02d:40".formatted(7 + number / 5, 7 + number / 5),
                List.of(
                        number % 2 == 0 ? "Quay Nine, west, level 2" : ODD_SITE + ", court, level 1",
                        "Install: 900 × 1200 mm, method " + variant.method().code()),
                number % 4 == 0 ? List.of("Not ready: rain forecast from 14:00") : List.of(),
                front(number),
                link(number),
                WorkList.of(variant, false).lines().stream()
                        .filter(line -> line.trade() == Trade.WINDOW)
                        .map(line -> new DaySheet.Step(line.text(), line.code().equals("RO")))
                        .toList());
    }

    static String link(int number) {
        return "https://drylap.example.org/crew/steps.html#12/QW%d-%02d%%20%%C3%%A9".formatted(number % 3, number);
    }

    private static Front front(int number) {
        var part = Part.values()[number % 3];
        boolean tall = number % 2 == 0;
        return new Front(
                tall ? 600 : 2400,
                tall ? 2100 : 900,
                number % 5 == 0,
                part,
                part,
                part,
                part,
                part,
                Part.NONE,
                part,
                part,
                Part.LATER,
                false);
    }

    private static DaySheet.Kind kind(Variant variant) {
        var built = AsBuilt.afterLine(
                variant, StepList.of(variant.method(), variant.approach()).last());
        return new DaySheet.Kind(
                "Method %s".formatted(variant.method().code()),
                "QW0-00, QW1-01",
                new LapSection(built, LapSection.Layout.STACKED, LapSection.Colours.PRINT).svg());
    }
}
