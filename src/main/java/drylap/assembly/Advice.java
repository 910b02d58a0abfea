package drylap.assembly;

import java.util.ArrayList;
import java.util.List;

/** What to think of before the first cut; the window maker's instructions and local code come before any of it. */
public final class Advice {
    private Advice() {}

    /** Pan advice is common practice, no source; the code's own rule is IRC R703.4.1. */
    public static List<String> of(Frame frame, Approach approach) {
        var advice = new ArrayList<String>();
        advice.add(
                switch (frame) {
                    case ALUMINUM, WOOD -> panWanted(frame, approach);
                    case VINYL ->
                        approach == Approach.DRAINAGE
                                ? "vinyl frame with a pan: more than common practice asks for (no source)"
                                : "vinyl frame: may do without a pan (common practice, no source)";
                    case FIBERGLASS -> "fiberglass frame: no common practice known; the maker decides on the pan";
                });
        if (approach == Approach.BARRIER)
            advice.add("no pan: only where the maker's instructions cover the sill (IRC R703.4.1)");
        advice.add(
                approach == Approach.DRAINAGE
                        ? "leave the sill flange unsealed, or interrupt the bed, so that the pan drains"
                        : "bed the sill flange in a continuous bead");
        return List.copyOf(advice);
    }

    private static String panWanted(Frame frame, Approach approach) {
        return approach == Approach.DRAINAGE
                ? "%s frame: the pan is right (common practice, no source)".formatted(frame.code())
                : "%s frame: wants a sill pan, choose drainage (common practice, no source)".formatted(frame.code());
    }
}
