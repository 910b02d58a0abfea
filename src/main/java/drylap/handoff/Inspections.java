package drylap.handoff;

import drylap.assembly.Step;
import drylap.assembly.WorkLine;
import drylap.handoff.Counter.Verdict;
import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffResult.NotYet;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.progress.OpeningState;
import drylap.progress.StepLog;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Someone looked, or sprayed water, and says what came of it. */
@Service
public final class Inspections {
    private final Counter counter;
    private final StepLog log;
    private final Clock clock;

    Inspections(Counter counter, StepLog log, Clock clock) {
        this.counter = counter;
        this.log = log;
        this.clock = clock;
    }

    /** Decides a hold point; a rough opening that passes is ticked as accepted. */
    public HandoffResult decide(Person who, HandoffRequest request, HoldPoint point, boolean passed) {
        var kind = passed ? ActKind.HOLD_PASSED : ActKind.HOLD_FAILED;
        return counter.act(who, Operation.PASS_HOLD_POINT, request, now -> {
            if (!passed && request.note().isBlank())
                return Verdict.refuse(
                        NotYet.because(request.openings().getFirst(), Saying.of("say what is wrong with it")));
            var refusal = passed && point == HoldPoint.ROUGH_OPENING
                    ? tick(who, request, now, Step.ACCEPT)
                    : Optional.<HandoffResult>empty();
            return refusal.map(Verdict::refuse).orElseGet(() -> Verdict.write(act(request, kind, point, null, now)));
        });
    }

    /** Records a water test; one that passes is ticked in the log, one that fails takes such a tick back. */
    public HandoffResult test(Person who, HandoffRequest request, WaterTest test, boolean passed) {
        var kind = passed ? ActKind.TEST_PASSED : ActKind.TEST_FAILED;
        return counter.act(who, Operation.RECORD_WATER_TEST, request, now -> {
            var refusal = passed ? tick(who, request, now, Step.WATER_TEST) : untick(who, request, now);
            return refusal.map(Verdict::refuse).orElseGet(() -> Verdict.write(act(request, kind, null, test, now)));
        });
    }

    private Optional<HandoffResult> tick(Person who, HandoffRequest request, List<OpeningState> now, Step step) {
        for (var state : now) {
            var line = lineOf(state, step);
            if (line.isEmpty() || state.done(line.get()).isPresent()) continue;
            var id = state.opening().id();
            String code = line.get().code();
            var marked = log.mark(
                    who,
                    MarkRequest.done(
                            Counter.keyOf(request.key(), id, code), request.folder(), id, code, clock.instant()));
            if (marked instanceof MarkResult.Refused refused) return Optional.of(NotYet.because(id, refused.saying()));
        }
        return Optional.empty();
    }

    private Optional<HandoffResult> untick(Person who, HandoffRequest request, List<OpeningState> now) {
        for (var state : now) {
            var line = lineOf(state, Step.WATER_TEST);
            if (line.isEmpty() || state.done(line.get()).isEmpty()) continue;
            var id = state.opening().id();
            String code = line.get().code();
            var undone = log.takeBack(
                    who,
                    Operation.RECORD_WATER_TEST,
                    request.folder(),
                    id,
                    code,
                    "a later water test failed",
                    Counter.keyOf(request.key(), id, code));
            if (undone instanceof MarkResult.Refused refused) return Optional.of(NotYet.because(id, refused.saying()));
        }
        return Optional.empty();
    }

    private static Optional<WorkLine> lineOf(OpeningState state, Step step) {
        return state.list().lines().stream()
                .filter(line -> line.steps().contains(step))
                .findFirst();
    }

    private static NewAct act(
            HandoffRequest request,
            ActKind kind,
            @Nullable HoldPoint point,
            @Nullable WaterTest test,
            List<OpeningState> now) {
        return new NewAct(
                request.key(),
                request.folder(),
                now.getFirst().site(),
                kind,
                point,
                null,
                request.note(),
                test,
                now.stream().map(Counter::entry).toList(),
                request.photos());
    }
}
