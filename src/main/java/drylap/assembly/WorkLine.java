package drylap.assembly;

import drylap.kernel.Trade;
import drylap.speech.Saying;
import java.util.List;
import java.util.OptionalInt;

/**
 * One line that somebody ticks at an opening.
 *
 * @param code names the line within its opening and never changes: its step's code, or a word where it has no step
 * @param steps what is done with it; empty for beads and checks, which put no layer on
 * @param installBlock part of the work that must fit one dry window
 * @param number its number on the window crew's {@link StepList}, where it stands there
 */
public record WorkLine(
        String code, String text, Trade trade, List<Step> steps, boolean installBlock, OptionalInt number) {
    public WorkLine {
        steps = List.copyOf(steps);
    }

    public Saying saying() {
        return Saying.of(text);
    }

    public static Saying list(List<WorkLine> lines) {
        return Saying.list("; ", lines.stream().map(WorkLine::saying).toList());
    }

    /** Ticked by the hand-off to the next trade, never by hand. */
    public boolean release() {
        return steps.equals(List.of(Step.RELEASE));
    }
}
