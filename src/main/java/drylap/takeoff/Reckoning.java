package drylap.takeoff;

import drylap.assembly.Approach;
import drylap.assembly.Dimensions;
import drylap.assembly.Length;
import drylap.assembly.Step;
import drylap.assembly.WorkLine;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.List;

/** Goes through the lines that are left of an opening's list and counts what each takes. */
final class Reckoning {
    /** The line that lays the sealant bed, where a method has one of its own; else it is laid with the window. */
    private static final String BED = "bed";

    private static final String SEAL_JAMBS = "seal-jambs";
    private static final int PAN_CORNERS = 2;
    private static final double MM3_PER_ML = 1_000;

    private final Opening opening;
    private final Rules rules;
    private final List<Strip> strips = new ArrayList<>();
    private int panCorners;
    private double beadMm;
    private int fasteners;
    private int windows;

    private Reckoning(Opening opening, Rules rules) {
        this.opening = opening;
        this.rules = rules;
    }

    static OpeningTakeOff of(Opening opening, Rules rules) {
        Reckoning reckoning = new Reckoning(opening, rules);
        List<WorkLine> listed = opening.workList().lines().stream()
                .filter(line -> line.number().isPresent())
                .toList();
        boolean ownBed = listed.stream().anyMatch(line -> line.code().equals(BED));
        for (WorkLine line : listed) if (line.number().getAsInt() > opening.done()) reckoning.take(line, ownBed);
        return reckoning.done();
    }

    private OpeningTakeOff done() {
        double radiusMm = rules.value(Rule.BEAD_MM) / 2;
        double millilitres = beadMm * Math.PI * radiusMm * radiusMm / MM3_PER_ML;
        return new OpeningTakeOff(opening.id(), strips, panCorners, beadMm, millilitres, fasteners, windows);
    }

    private void take(WorkLine line, boolean ownBed) {
        if (line.code().equals(BED)) beadMm += bed();
        if (line.code().equals(SEAL_JAMBS)) beadMm += 2.0 * opening.heightMm();
        for (Step step : line.steps()) take(step, ownBed);
    }

    private void take(Step step, boolean ownBed) {
        switch (step) {
            case APRON -> across(Strip.Kind.APRON, (apron() - opening.widthMm()) / 2);
            case PAN -> {
                across(Strip.Kind.PAN, rules.value(Rule.PAN_TURN_UP_MM));
                panCorners += PAN_CORNERS;
            }
            case JAMB_FLASHING -> {
                jamb();
                jamb();
            }
            case HEAD_FLASHING ->
                across(Strip.Kind.HEAD, (apron() - opening.widthMm()) / 2 + rules.value(Rule.HEAD_PAST_JAMBS_MM));
            case SET -> {
                windows++;
                fasteners += 2 * along(opening.widthMm()) + 2 * along(opening.heightMm());
                if (!ownBed) beadMm += bed();
            }
            default -> {}
        }
    }

    /** Along sill or head, and as far past the rough opening on either side. */
    private void across(Strip.Kind kind, double pastMm) {
        strips.add(new Strip(
                opening.id(),
                kind,
                kind.widthMm(rules),
                opening.widthMm() + 2 * pastMm,
                pastMm,
                pastMm + opening.widthMm()));
    }

    /** The rough opening and both jamb flashings; head flashing covers as much, and some more. */
    private double apron() {
        return Dimensions.apronLength(new Length(opening.widthMm()), new Length(rules.value(Rule.JAMB_FLASHING_MM)))
                .millimetres();
    }

    /** From the apron's lower edge, not past it, to half an inch less above the head than the head flashing is wide. */
    private void jamb() {
        double below = rules.value(Rule.APRON_WIDTH_MM);
        double above = Dimensions.jambFlashingAboveOpening(new Length(rules.value(Rule.HEAD_FLASHING_MM)))
                .millimetres();
        strips.add(new Strip(
                opening.id(),
                Strip.Kind.JAMB,
                Strip.Kind.JAMB.widthMm(rules),
                below + opening.heightMm() + above,
                below,
                below + opening.heightMm()));
    }

    /** Behind head and jamb flanges; behind the sill flange only where the barrier approach seals all four sides. */
    private double bed() {
        int across = opening.approach() == Approach.BARRIER ? 2 : 1;
        return 2.0 * opening.heightMm() + across * opening.widthMm();
    }

    /** One at each end of a flange and none farther from the next than the rule says. */
    private int along(int millimetres) {
        return (int) Math.ceil(millimetres / rules.value(Rule.FASTENER_SPACING_MM)) + 1;
    }
}
