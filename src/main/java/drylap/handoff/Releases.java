package drylap.handoff;

import drylap.assembly.Step;
import drylap.handoff.Counter.Verdict;
import drylap.handoff.HandoffResult.Hindrance;
import drylap.handoff.HandoffResult.NotYet;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.MarkResult;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** The window crew or the scheduler says: these openings are ready for the trade that follows. */
@Service
public final class Releases {
    private final Counter counter;
    private final OpeningStates states;
    private final StepLog log;
    private final Custodies custodies;
    private final HoldPoints holdPoints;
    private final Decisions decisions;
    private final Clock clock;

    Releases(
            Counter counter,
            OpeningStates states,
            StepLog log,
            Custodies custodies,
            HoldPoints holdPoints,
            Decisions decisions,
            Clock clock) {
        this.counter = counter;
        this.states = states;
        this.log = log;
        this.custodies = custodies;
        this.holdPoints = holdPoints;
        this.decisions = decisions;
        this.clock = clock;
    }

    /** What speaks against releasing this opening, in words; empty where nothing does. */
    public List<Saying> against(Person who, FolderId folder, OpeningId opening) {
        return against(states.of(who, folder, opening));
    }

    /** The hold points that stand before this opening's release, each with whether it was passed. */
    public Map<HoldPoint, Boolean> holdPoints(Person who, FolderId folder, OpeningId opening) {
        var state = states.of(who, folder, opening);
        var held = decisions.held(folder, state.opening());
        Map<HoldPoint, Boolean> passed = new EnumMap<>(HoldPoint.class);
        for (var point : holdPoints.at(folder, state.site()))
            switch (point) {
                case ROUGH_OPENING ->
                    passed.put(point, state.built().done().contains(Step.ACCEPT) && !held.roughOpeningRejected());
                case MOCK_UP -> passed.put(point, held.mockUpPassed());
                case SPOT_TEST -> {
                    if (state.opening().waterTest()) passed.put(point, held.testPassed());
                }
            }
        return passed;
    }

    /** Releases all of them or none. */
    public HandoffResult release(Person who, HandoffRequest request) {
        return counter.act(who, Operation.RELEASE, request, now -> {
            var hindrances = now.stream().flatMap(this::hindrances).toList();
            return hindrances.isEmpty() ? tick(who, request, now) : Verdict.refuse(new NotYet(hindrances));
        });
    }

    private Verdict tick(Person who, HandoffRequest request, List<OpeningState> now) {
        List<HandoffAct.Entry> entries = new ArrayList<>();
        for (var state : now) {
            var id = state.opening().id();
            var line = state.list().release().code();
            var marked =
                    log.release(who, request.folder(), id, clock.instant(), Counter.keyOf(request.key(), id, line));
            if (marked instanceof MarkResult.Refused refused)
                return Verdict.refuse(NotYet.because(id, refused.saying()));
            entries.add(Counter.entry(marked instanceof MarkResult.Marked done ? done.state() : state));
        }
        return Verdict.write(new NewAct(
                request.key(),
                request.folder(),
                now.getFirst().site(),
                ActKind.RELEASED,
                null,
                null,
                request.note(),
                null,
                entries,
                request.photos()));
    }

    private Stream<Hindrance> hindrances(OpeningState state) {
        return against(state).stream()
                .map(words -> new Hindrance(state.opening().id(), words));
    }

    private List<Saying> against(OpeningState state) {
        return ReleaseCheck.against(
                state,
                custodies.of(state.folder(), state.opening().id()),
                holdPoints.at(state.folder(), state.site()),
                decisions.held(state.folder(), state.opening()));
    }
}
