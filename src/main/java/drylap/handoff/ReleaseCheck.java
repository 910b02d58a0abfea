package drylap.handoff;

import drylap.assembly.WorkLine;
import drylap.progress.OpeningState;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What stands between an opening and its release. */
final class ReleaseCheck {
    private ReleaseCheck() {}

    /**
     * @param applying the hold points of its site
     * @param held what was decided at its hold points
     * @return in words; empty: it may be released
     */
    static List<String> against(OpeningState state, Custody custody, Set<HoldPoint> applying, Held held) {
        List<String> against = new ArrayList<>();
        if (custody.handedOver()) against.add("is " + custody.words());
        var missing = state.list().missing(state.done(), state.list().release());
        if (!missing.isEmpty())
            against.add("still to do: " + missing.stream().map(WorkLine::text).collect(Collectors.joining("; ")));
        if (!state.rating().mayBeLeft())
            against.add("may not be left like this: " + state.rating().words());
        state.missing().forEach(lap -> against.add("lap missing: " + lap.words()));
        if (applying.contains(HoldPoint.ROUGH_OPENING) && held.roughOpeningRejected())
            against.add("the rough opening was rejected");
        if (applying.contains(HoldPoint.MOCK_UP) && !held.mockUpPassed())
            against.add("the first of its kind has not passed as a mock-up");
        if (applying.contains(HoldPoint.SPOT_TEST) && state.opening().waterTest() && !held.testPassed())
            against.add("its spot water test has not passed");
        return List.copyOf(against);
    }

    /**
     * What was decided so far.
     *
     * @param mockUpPassed at any opening of the same kind at the site
     */
    record Held(boolean roughOpeningRejected, boolean mockUpPassed, boolean testPassed) {}
}
