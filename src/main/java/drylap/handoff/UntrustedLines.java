package drylap.handoff;

import drylap.assembly.WorkLine;
import drylap.progress.OpeningState;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which done lines of the window crew a return takes back: the release, and what rests on the layer in doubt. */
final class UntrustedLines {
    private UntrustedLines() {}

    /** In the order in which they can be undone. */
    static List<WorkLine> of(OpeningState state, ReturnReason reason, @Nullable String redoFrom) {
        List<WorkLine> undone = new ArrayList<>();
        undone.add(state.list().release());
        var first = redoFrom == null ? byReason(state, reason) : named(state, redoFrom);
        if (first == null || !state.done().contains(first.code())) return undone;
        state.list().restingOn(state.done(), first).reversed().stream()
                .filter(line -> !undone.contains(line))
                .forEach(undone::add);
        if (!undone.contains(first)) undone.add(first);
        return undone;
    }

    private static @Nullable WorkLine byReason(OpeningState state, ReturnReason reason) {
        return reason.redoFrom()
                .flatMap(step -> state.list().lines().stream()
                        .filter(line -> line.steps().contains(step))
                        .findFirst())
                .orElse(null);
    }

    private static WorkLine named(OpeningState state, String code) {
        return state.list()
                .line(code)
                .orElseThrow(() -> new IllegalArgumentException("opening %s has no line \"%s\"; accepted: %s"
                        .formatted(
                                state.opening().id(),
                                code,
                                state.list().lines().stream()
                                        .map(WorkLine::code)
                                        .toList())));
    }
}
