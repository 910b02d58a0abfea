package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.kernel.FacadeId;
import drylap.takeoff.CutList;
import drylap.takeoff.DayList;
import drylap.takeoff.OpeningTakeOff;
import drylap.takeoff.Piece;
import drylap.takeoff.SiteList;
import drylap.takeoff.Strip;
import drylap.takeoff.Sums;
import drylap.takeoff.Supplies;
import drylap.takeoff.VanList;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes what is taken off as files: sums, what each opening takes, and how strips are cut from rolls. */
public final class TakeOffWriter {
    private static final String[] CREW_AND_DATE = {"crew", "date"};
    private static final String[] SITE_AND_EXTENT = {"site", "extent"};
    private static final String[] SUMS = {
        "windows", "apron_mm", "pan_mm", "jamb_mm", "head_mm", "pan_corners", "cartridges", "fasteners"
    };
    private static final String[] OPENING = {"opening", "windows", "bead_mm", "sealant_ml", "fasteners", "pan_corners"};
    private static final String[] CUT = {
        "stuff", "width_mm", "roll", "opening", "strip", "length_mm", "left_mm", "piece", "pieces"
    };

    private final Lines sums;
    private final Lines openings;
    private final Lines cuts;

    private TakeOffWriter(String sumsFile, String[] sumsOf, String[] of) {
        sums = new Lines(Header.of(sumsFile, and(sumsOf, SUMS)));
        openings = new Lines(Header.of("take_off_openings.csv", and(of, OPENING)));
        cuts = new Lines(Header.of("cut_list.csv", and(of, CUT)));
    }

    /** @throws IOException where the target cannot be written */
    public static void vans(List<VanList> vans, Path target) throws IOException {
        TakeOffWriter writer = new TakeOffWriter("take_off_days.csv", CREW_AND_DATE, CREW_AND_DATE);
        for (VanList van : vans) {
            writer.sums(van.supplies().sums(), van.crew(), van.date());
            writer.supplies(van.supplies(), van.crew(), van.date());
        }
        writer.write(target);
    }

    /**
     * The crew is blank where all are meant.
     *
     * @throws IOException where the target cannot be written
     */
    public static void days(List<DayList> days, Path target) throws IOException {
        TakeOffWriter writer = new TakeOffWriter("take_off_days.csv", CREW_AND_DATE, CREW_AND_DATE);
        for (DayList day : days) {
            day.byCrew().forEach((crew, of) -> writer.sums(of, crew, day.date()));
            writer.sums(day.supplies().sums(), null, day.date());
            writer.supplies(day.supplies(), null, day.date());
        }
        writer.write(target);
    }

    /**
     * The facade is blank where all are meant.
     *
     * @throws IOException where the target cannot be written
     */
    public static void site(SiteList site, Path target) throws IOException {
        TakeOffWriter writer = new TakeOffWriter("take_off_site.csv", and(SITE_AND_EXTENT, "facade"), SITE_AND_EXTENT);
        String extent = site.extent().code();
        for (FacadeId wall : site.byWall().keySet())
            writer.sums(Objects.requireNonNull(site.byWall().get(wall)), site.site(), extent, wall.facade());
        writer.sums(site.supplies().sums(), site.site(), extent, null);
        writer.supplies(site.supplies(), site.site(), extent);
        writer.write(target);
    }

    private void write(Path target) throws IOException {
        FolderWriter.write(List.of(sums, openings, cuts), target);
    }

    private void sums(Sums of, @Nullable Object... whose) {
        add(
                sums,
                whose,
                of.windows(),
                tenth(of.lengthMm(Strip.Kind.APRON)),
                tenth(of.lengthMm(Strip.Kind.PAN)),
                tenth(of.lengthMm(Strip.Kind.JAMB)),
                tenth(of.lengthMm(Strip.Kind.HEAD)),
                of.panCorners(),
                of.cartridges(),
                of.fasteners());
    }

    private void supplies(Supplies supplies, @Nullable Object... whose) {
        for (OpeningTakeOff one : supplies.openings())
            add(
                    openings,
                    whose,
                    one.opening(),
                    one.windows(),
                    tenth(one.beadMm()),
                    tenth(one.sealantMl()),
                    one.fasteners(),
                    one.panCorners());
        supplies.cuts().forEach(cut -> cuts(cut, whose));
    }

    private void cuts(CutList cut, @Nullable Object[] whose) {
        int number = 0;
        for (CutList.Roll roll : cut.rolls()) {
            number++;
            for (Piece piece : roll.pieces())
                add(
                        cuts,
                        whose,
                        cut.pan() ? "pan" : "flashing",
                        tenth(cut.widthMm()),
                        number,
                        piece.strip().opening(),
                        piece.strip().kind().code(),
                        tenth(piece.lengthMm()),
                        tenth(roll.left()),
                        piece.number(),
                        piece.of());
        }
    }

    private static void add(Lines lines, @Nullable Object[] whose, Object... cells) {
        @Nullable Object[] all = Arrays.copyOf(whose, whose.length + cells.length);
        System.arraycopy(cells, 0, all, whose.length, cells.length);
        lines.add(all);
    }

    private static String[] and(String[] some, String... others) {
        return Stream.of(some, others).flatMap(Stream::of).toArray(String[]::new);
    }

    private static String tenth(double millimetres) {
        return String.format(Locale.ROOT, "%.1f", millimetres);
    }
}
