package drylap.handoff;

import drylap.handoff.Counter.Verdict;
import drylap.handoff.HandoffResult.ChangedMeanwhile;
import drylap.handoff.HandoffResult.NotYet;
import drylap.progress.MarkResult;
import drylap.progress.OpeningState;
import drylap.progress.StepLog;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The follow-on trade takes released openings over, or gives one back. */
@Service
public final class Takeovers {
    private final Counter counter;
    private final StepLog log;
    private final Custodies custodies;

    Takeovers(Counter counter, StepLog log, Custodies custodies) {
        this.counter = counter;
        this.log = log;
        this.custodies = custodies;
    }

    /** Takes all of them over or none. */
    public HandoffResult accept(Person who, HandoffRequest request) {
        return counter.act(
                who,
                Operation.ACCEPT,
                request,
                now -> now.stream()
                        .flatMap(state -> unlessReleased(state).stream())
                        .findFirst()
                        .map(Verdict::refuse)
                        .orElseGet(() -> Verdict.write(act(request, ActKind.ACCEPTED, null, now))));
    }

    /**
     * Gives one opening back. Laps that are no longer trusted are undone in the log, from {@code redoFrom} on, so that the crew
     * does them anew; without it only the release is taken back.
     *
     * @param redoFrom the code of a line; absent: as the reason has it
     */
    public HandoffResult giveBack(Person who, HandoffRequest request, ReturnReason reason, @Nullable String redoFrom) {
        if (request.seen().size() != 1)
            throw new IllegalArgumentException("%d openings; accepted: one, with its own reason"
                    .formatted(request.seen().size()));
        return counter.act(who, Operation.RETURN, request, now -> {
            var state = now.getFirst();
            var refusal = unlessHandedOver(state).or(() -> reopen(who, request, state, reason, redoFrom));
            return refusal.map(Verdict::refuse)
                    .orElseGet(() -> Verdict.write(act(request, ActKind.RETURNED, reason, now)));
        });
    }

    private Optional<HandoffResult> reopen(
            Person who, HandoffRequest request, OpeningState state, ReturnReason reason, @Nullable String redoFrom) {
        var id = state.opening().id();
        var lines = UntrustedLines.of(state, reason, redoFrom);
        for (var line : lines) {
            var key = Counter.keyOf(request.key(), id, line.code());
            String words = "returned: " + reason.words();
            var undone = log.takeBack(who, Operation.RETURN, request.folder(), id, line.code(), words, key);
            if (undone instanceof MarkResult.Refused refused) return Optional.of(NotYet.because(id, refused.saying()));
        }
        return Optional.empty();
    }

    private Optional<HandoffResult> unlessReleased(OpeningState state) {
        var custody = custodies.of(state.folder(), state.opening().id());
        return switch (custody) {
            case Custody.Released _ -> Optional.empty();
            case Custody.Accepted accepted -> meanwhile(state, Saying.of("was accepted by {0}", accepted.by()));
            case Custody.Returned returned -> meanwhile(state, Saying.of("was returned by {0}", returned.by()));
            case Custody.Unreleased _ ->
                Optional.of(NotYet.because(state.opening().id(), custody.saying()));
        };
    }

    private Optional<HandoffResult> unlessHandedOver(OpeningState state) {
        var custody = custodies.of(state.folder(), state.opening().id());
        if (custody.handedOver()) return Optional.empty();
        return custody instanceof Custody.Returned returned
                ? meanwhile(state, Saying.of("was returned by {0}", returned.by()))
                : Optional.of(NotYet.because(state.opening().id(), custody.saying()));
    }

    private static Optional<HandoffResult> meanwhile(OpeningState state, Saying words) {
        return Optional.of(new ChangedMeanwhile(state.opening().id(), words));
    }

    private static NewAct act(
            HandoffRequest request, ActKind kind, @Nullable ReturnReason reason, List<OpeningState> now) {
        return new NewAct(
                request.key(),
                request.folder(),
                now.getFirst().site(),
                kind,
                null,
                reason,
                request.note(),
                null,
                now.stream().map(Counter::entry).toList(),
                request.photos());
    }
}
