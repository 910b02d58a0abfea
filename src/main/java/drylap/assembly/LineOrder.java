package drylap.assembly;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which lines wait for which, directly or through others. */
final class LineOrder {
    private final List<WorkLine> lines;
    private final StepOrder order;

    private LineOrder(List<WorkLine> lines, StepOrder order) {
        this.lines = lines;
        this.order = order;
    }

    /** The codes of all lines that must be done before the line of each code. */
    static Map<String, Set<String>> of(List<WorkLine> lines, StepOrder order) {
        var direct = new LineOrder(lines, order);
        Map<String, Set<String>> before = new HashMap<>();
        lines.forEach(line -> before.put(line.code(), direct.before(line)));
        for (boolean grew = true; grew; ) {
            grew = false;
            for (var own : before.values()) grew |= own.addAll(beforeAny(before, own));
        }
        return before;
    }

    private static Set<String> beforeAny(Map<String, Set<String>> before, Set<String> codes) {
        return codes.stream()
                .flatMap(code -> before.getOrDefault(code, Set.of()).stream())
                .collect(Collectors.toSet());
    }

    private Set<String> before(WorkLine line) {
        return lines.stream()
                .filter(other -> !other.equals(line) && comesBefore(other, line))
                .map(WorkLine::code)
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** By the steps' precedence; a line without steps has its place in the numbered list instead. */
    private boolean comesBefore(WorkLine earlier, WorkLine line) {
        boolean bySteps = line.steps().stream()
                .anyMatch(step -> order.before(step).stream().anyMatch(earlier.steps()::contains));
        return bySteps || byNumber(earlier, line);
    }

    private static boolean byNumber(WorkLine earlier, WorkLine line) {
        return (line.steps().isEmpty() || earlier.steps().isEmpty())
                && earlier.number().isPresent()
                && line.number().isPresent()
                && earlier.number().getAsInt() < line.number().getAsInt();
    }
}
