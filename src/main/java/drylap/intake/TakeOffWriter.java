package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.takeoff.CutList;
import drylap.takeoff.OpeningTakeOff;
import drylap.takeoff.Strip;
import drylap.takeoff.VanList;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes what window crews load as files: sums of a day, what each opening takes, and how strips are cut from rolls. */
public final class TakeOffWriter {
    private static final Header DAYS = Header.of(
            "take_off_days.csv",
            "crew",
            "date",
            "windows",
            "apron_mm",
            "pan_mm",
            "jamb_mm",
            "head_mm",
            "pan_corners",
            "cartridges",
            "fasteners");
    private static final Header OPENINGS = Header.of(
            "take_off_openings.csv",
            "crew",
            "date",
            "opening",
            "windows",
            "bead_mm",
            "sealant_ml",
            "fasteners",
            "pan_corners");
    private static final Header CUTS = Header.of(
            "cut_list.csv", "crew", "date", "stuff", "width_mm", "roll", "opening", "strip", "length_mm", "left_mm");

    private final List<VanList> days;

    private TakeOffWriter(List<VanList> days) {
        this.days = days;
    }

    /** @throws IOException where the target cannot be written */
    public static void write(List<VanList> days, Path target) throws IOException {
        TakeOffWriter writer = new TakeOffWriter(days);
        FolderWriter.write(List.of(writer.sums(), writer.openings(), writer.cuts()), target);
    }

    private Lines sums() {
        Lines lines = new Lines(DAYS);
        for (VanList day : days)
            lines.add(
                    day.crew(),
                    day.date(),
                    day.windows(),
                    length(day, Strip.Kind.APRON),
                    length(day, Strip.Kind.PAN),
                    length(day, Strip.Kind.JAMB),
                    length(day, Strip.Kind.HEAD),
                    day.panCorners(),
                    day.cartridges(),
                    day.fasteners());
        return lines;
    }

    private static String length(VanList day, Strip.Kind kind) {
        return tenth(day.lengthsMm().getOrDefault(kind, 0.0));
    }

    private Lines openings() {
        Lines lines = new Lines(OPENINGS);
        for (VanList day : days)
            for (OpeningTakeOff one : day.openings())
                lines.add(
                        day.crew(),
                        day.date(),
                        one.opening(),
                        one.windows(),
                        tenth(one.beadMm()),
                        tenth(one.sealantMl()),
                        one.fasteners(),
                        one.panCorners());
        return lines;
    }

    private Lines cuts() {
        Lines lines = new Lines(CUTS);
        for (VanList day : days) for (CutList cut : day.cuts()) add(lines, day, cut);
        return lines;
    }

    private static void add(Lines lines, VanList day, CutList cut) {
        int number = 0;
        for (CutList.Roll roll : cut.rolls()) {
            number++;
            for (Strip strip : roll.strips())
                lines.add(
                        day.crew(),
                        day.date(),
                        cut.pan() ? "pan" : "flashing",
                        tenth(cut.widthMm()),
                        number,
                        strip.opening(),
                        strip.kind().code(),
                        tenth(strip.lengthMm()),
                        tenth(roll.left()));
        }
    }

    private static String tenth(double millimetres) {
        return String.format(Locale.ROOT, "%.1f", millimetres);
    }
}
