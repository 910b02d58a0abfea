package drylap.handoff;

import drylap.assembly.WorkLine;
import drylap.progress.OpeningState;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What stands between an opening and its release. */
final class ReleaseCheck {
    private ReleaseCheck() {}

    /**
     * @param applying the hold points of its site
     * @param held what was decided at its hold points
     * @return in words; empty: it may be released
     */
    static List<Saying> against(OpeningState state, Custody custody, Set<HoldPoint> applying, Held held) {
        List<Saying> against = new ArrayList<>();
        if (custody.handedOver()) against.add(Saying.of("is {0}", custody.saying()));
        var missing = state.list().missing(state.done(), state.list().release());
        if (!missing.isEmpty()) against.add(Saying.of("still to do: {0}", WorkLine.list(missing)));
        if (!state.rating().mayBeLeft())
            against.add(Saying.of(
                    "may not be left like this: {0}", Saying.of(state.rating().words())));
        state.missing().forEach(lap -> against.add(Saying.of("lap missing: {0}", lap.saying())));
        if (applying.contains(HoldPoint.ROUGH_OPENING) && held.roughOpeningRejected())
            against.add(Saying.of("the rough opening was rejected"));
        if (applying.contains(HoldPoint.MOCK_UP) && !held.mockUpPassed())
            against.add(Saying.of("the first of its kind has not passed as a mock-up"));
        if (applying.contains(HoldPoint.SPOT_TEST) && state.opening().waterTest() && !held.testPassed())
            against.add(Saying.of("its spot water test has not passed"));
        return List.copyOf(against);
    }

    /**
     * What was decided so far.
     *
     * @param mockUpPassed at any opening of the same kind at the site
     */
    record Held(boolean roughOpeningRejected, boolean mockUpPassed, boolean testPassed) {}
}
