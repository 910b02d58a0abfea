package drylap.assembly;

import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/** What to think of before the first cut; the window maker's instructions and local code come before any of it. */
public final class Advice {
    private Advice() {}

    /** Pan advice is common practice, no source; the code's own rule is IRC R703.4.1. */
    public static List<Saying> of(Frame frame, Approach approach) {
        boolean drained = approach == Approach.DRAINAGE;
        var advice = new ArrayList<Saying>();
        advice.add(Saying.of(
                switch (frame) {
                    case ALUMINUM ->
                        drained
                                ? "aluminum frame: the pan is right (common practice, no source)"
                                : "aluminum frame: wants a sill pan, choose drainage (common practice, no source)";
                    case WOOD ->
                        drained
                                ? "wood frame: the pan is right (common practice, no source)"
                                : "wood frame: wants a sill pan, choose drainage (common practice, no source)";
                    case VINYL ->
                        drained
                                ? "vinyl frame with a pan: more than common practice asks for (no source)"
                                : "vinyl frame: may do without a pan (common practice, no source)";
                    case FIBERGLASS -> "fiberglass frame: no common practice known; the maker decides on the pan";
                }));
        if (!drained)
            advice.add(Saying.of("no pan: only where the maker's instructions cover the sill (IRC R703.4.1)"));
        advice.add(Saying.of(
                drained
                        ? "leave the sill flange unsealed, or interrupt the bed, so that the pan drains"
                        : "bed the sill flange in a continuous bead"));
        return List.copyOf(advice);
    }
}
