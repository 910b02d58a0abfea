package drylap.assembly;

import static drylap.assembly.Step.ACCEPT;
import static drylap.assembly.Step.APRON;
import static drylap.assembly.Step.BARRIER_HEAD;
import static drylap.assembly.Step.BARRIER_JAMB;
import static drylap.assembly.Step.BARRIER_SILL;
import static drylap.assembly.Step.CLOSE_FLAP;
import static drylap.assembly.Step.HEAD_FLASHING;
import static drylap.assembly.Step.JAMB_FLASHING;
import static drylap.assembly.Step.OPEN_FLAP;
import static drylap.assembly.Step.PAN;
import static drylap.assembly.Step.RELEASE;
import static drylap.assembly.Step.SET;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which steps the lines of {@link StepList} stand for; a line of beads or checks stands for none of its own. */
final class ListedWork {
    private static final List<Step> NONE = List.of();
    private static final List<Step> WALL_BEFORE = List.of(BARRIER_SILL, BARRIER_JAMB, BARRIER_HEAD);

    private ListedWork() {}

    static Set<Step> doneBy(Variant variant, int line) {
        var lines = lines(variant.method());
        if (line < 0 || line > lines.size())
            throw new IllegalArgumentException("line %d of the list of method %s; accepted: 0 to %d"
                    .formatted(line, variant.method(), lines.size()));
        var done = EnumSet.noneOf(Step.class);
        done.addAll(onTheWallBefore(variant));
        lines.subList(0, line).forEach(done::addAll);
        if (variant.approach() == Approach.BARRIER) done.remove(PAN);
        return done;
    }

    /** The layers that are there before the window crew comes. */
    static List<Step> onTheWallBefore(Variant variant) {
        return variant.method().barrierFirst() ? WALL_BEFORE : NONE;
    }

    static List<Step> stepsOf(Variant variant, int line) {
        return lines(variant.method()).get(line - 1).stream()
                .filter(step -> step != PAN || variant.approach() == Approach.DRAINAGE)
                .toList();
    }

    private static List<List<Step>> lines(Method method) {
        return switch (method) {
            case A ->
                List.of(
                        List.of(ACCEPT),
                        List.of(APRON),
                        List.of(PAN),
                        NONE,
                        List.of(SET),
                        NONE,
                        List.of(JAMB_FLASHING),
                        List.of(HEAD_FLASHING),
                        List.of(RELEASE));
            case A1 ->
                List.of(
                        List.of(ACCEPT),
                        List.of(OPEN_FLAP),
                        List.of(APRON),
                        List.of(PAN),
                        List.of(SET),
                        NONE,
                        List.of(JAMB_FLASHING),
                        List.of(HEAD_FLASHING),
                        List.of(CLOSE_FLAP, RELEASE));
            case B ->
                List.of(
                        List.of(ACCEPT),
                        List.of(APRON),
                        List.of(PAN),
                        List.of(JAMB_FLASHING),
                        List.of(SET),
                        List.of(HEAD_FLASHING),
                        NONE,
                        List.of(RELEASE));
            case B1 ->
                List.of(
                        List.of(ACCEPT),
                        List.of(OPEN_FLAP),
                        List.of(APRON, PAN),
                        List.of(JAMB_FLASHING),
                        List.of(SET),
                        List.of(HEAD_FLASHING),
                        List.of(CLOSE_FLAP),
                        List.of(RELEASE));
        };
    }
}
