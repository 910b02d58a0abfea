package drylap.assembly;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The numbered list that a crew ticks at an opening. The install block is never interrupted: it runs from the first cut or
 * strip to the last lap, and the release follows it.
 */
public record StepList(List<ListedStep> steps) {
    /** One line of the list; {@code install} marks the block that must fit one dry window. */
    public record ListedStep(int number, String text, boolean install) {}

    private record Kind(Method method, Approach approach) {}

    /** The lists never change and are asked for at every opening. */
    private static final Map<Kind, StepList> LISTS = new ConcurrentHashMap<>();

    public static StepList of(Method method, Approach approach) {
        return LISTS.computeIfAbsent(new Kind(method, approach), kind -> made(method, approach));
    }

    private static StepList made(Method method, Approach approach) {
        return new StepList(lines(method).stream()
                .filter(step -> approach == Approach.DRAINAGE || !step.text().equals(PAN))
                .toList());
    }

    /** The steps of the block that are still to do after the line {@code done} (0: nothing is done). */
    public int remaining(int done) {
        return (int) steps.stream()
                .filter(step -> step.install() && step.number() > done)
                .count();
    }

    public int total() {
        return remaining(0);
    }

    public boolean begun(int done) {
        return remaining(done) < total();
    }

    public boolean complete(int done) {
        return remaining(done) == 0;
    }

    /** Begun but not complete: open to rain. */
    public boolean open(int done) {
        return begun(done) && !complete(done);
    }

    public int last() {
        return steps.getLast().number();
    }

    private static final String PAN = "sill pan";
    private static final String ACCEPT = "accept rough opening: size, square, plumb, level, dry";
    private static final String CUT = "cut barrier, head cuts at 45°, fold flap up and hold";
    private static final String APRON = "apron under the sill, top edge only";
    private static final String BED = "sealant bed behind the flange";
    private static final String SET = "bed and set window: shim, plumb, level, square, fasten";
    private static final String SEAL_JAMBS = "sealant on outer jamb flanges over the fastener heads";
    private static final String JAMBS = "jamb flashing";
    private static final String HEAD = "head flashing over the tops of the jamb flashing";
    private static final String FLAP = "flap down over the head flashing, tape the diagonal cuts";
    private static final String CHECK = "check and photograph";
    private static final String RELEASE = "release to the wrap trade, apron edge free";

    /** Names a line of beads or checks, which has no step to be named by. */
    static String word(ListedStep line) {
        return switch (line.text()) {
            case BED -> "bed";
            case SEAL_JAMBS -> "seal-jambs";
            case CHECK -> "check";
            default -> throw new IllegalArgumentException("no word for the line: " + line.text());
        };
    }

    private static List<ListedStep> lines(Method method) {
        return switch (method) {
            case A -> numbered(2, 8, ACCEPT, APRON, PAN, BED, SET, SEAL_JAMBS, JAMBS, HEAD, CHECK + ", " + RELEASE);
            case A1 -> numbered(2, 9, ACCEPT, CUT, APRON, PAN, SET, SEAL_JAMBS, JAMBS, HEAD, FLAP + "; " + CHECK);
            case B -> numbered(2, 6, ACCEPT, APRON, PAN, JAMBS, SET, HEAD, CHECK, RELEASE);
            case B1 ->
                numbered(2, 7, ACCEPT, CUT, APRON + ", pan where drained", JAMBS, SET, HEAD, FLAP, CHECK + ", release");
        };
    }

    private static List<ListedStep> numbered(int firstOfBlock, int lastOfBlock, String... texts) {
        return java.util.stream.IntStream.rangeClosed(1, texts.length)
                .mapToObj(n -> new ListedStep(n, texts[n - 1], n >= firstOfBlock && n <= lastOfBlock))
                .toList();
    }
}
