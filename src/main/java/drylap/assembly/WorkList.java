package drylap.assembly;

import drylap.kernel.Trade;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** Everything that all trades tick at an opening, from the bare wall to the cladding, in the customary order. */
public final class WorkList {
    private record Key(Variant variant, boolean waterTest) {}

    private static final Map<Key, WorkList> KNOWN = new ConcurrentHashMap<>();

    private final Variant variant;
    private final List<WorkLine> lines;
    private final Map<String, Set<String>> waits;

    private WorkList(Key key) {
        variant = key.variant();
        var order = key.waterTest() ? StepOrder.withWaterTest(variant) : StepOrder.of(variant);
        lines = WorkLines.of(variant, order);
        waits = LineOrder.of(lines, order);
    }

    public static WorkList of(Variant variant, boolean waterTest) {
        return KNOWN.computeIfAbsent(new Key(variant, waterTest), WorkList::new);
    }

    public Variant variant() {
        return variant;
    }

    public List<WorkLine> lines() {
        return lines;
    }

    public Optional<WorkLine> line(String code) {
        return lines.stream().filter(line -> line.code().equals(code)).findFirst();
    }

    /** The line with which the window crew hands the opening over. */
    public WorkLine release() {
        return lines.stream().filter(WorkLine::release).findFirst().orElseThrow();
    }

    /** As the numbered list stands after line {@code number} (0: nothing is done). */
    public Set<String> doneBy(int number) {
        var steps = ListedWork.doneBy(variant, number);
        return lines.stream()
                .filter(line -> line.number().isPresent()
                        ? line.number().getAsInt() <= number
                        : steps.containsAll(line.steps()))
                .map(WorkLine::code)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The opening with these lines done, each in its order. */
    public AsBuilt built(Collection<String> done) {
        return AsBuilt.of(variant, steps(done));
    }

    /** What marking this line would do to an opening with these lines done. */
    public MarkCheck check(Collection<String> done, WorkLine line) {
        if (done.contains(line.code())) return new MarkCheck.AlreadyDone();
        var first = missing(done, line);
        if (first.isEmpty()) return line.release() ? new MarkCheck.ByRelease() : new MarkCheck.Legal();
        return LapsAtRisk.of(built(done), line, first)
                .<MarkCheck>map(lap -> new MarkCheck.WouldReverse(lap.lap(), lap.asItWouldBe(), first))
                .orElseGet(() -> new MarkCheck.TooEarly(first));
    }

    /** The lines that a person may mark now. */
    public List<WorkLine> next(Collection<String> done) {
        return lines.stream()
                .filter(line -> check(done, line) instanceof MarkCheck.Legal)
                .toList();
    }

    /** All that this line waits for, directly or through others, and that is not done yet. */
    public List<WorkLine> missing(Collection<String> done, WorkLine line) {
        return lines.stream()
                .filter(other -> !done.contains(other.code()) && waitsFor(line, other))
                .toList();
    }

    /** The done lines that could not stand without this one. */
    public List<WorkLine> restingOn(Collection<String> done, WorkLine line) {
        return lines.stream()
                .filter(other -> done.contains(other.code()) && waitsFor(other, line))
                .toList();
    }

    /** Whether every line of a trade is done; false where it has none. */
    public boolean finished(Collection<String> done, Trade trade) {
        var own = lines.stream().filter(line -> line.trade() == trade).toList();
        return !own.isEmpty() && own.stream().allMatch(line -> done.contains(line.code()));
    }

    public boolean installed(Collection<String> done) {
        return lines.stream().filter(WorkLine::installBlock).allMatch(line -> done.contains(line.code()));
    }

    private Set<Step> steps(Collection<String> done) {
        var steps = EnumSet.noneOf(Step.class);
        steps.addAll(ListedWork.onTheWallBefore(variant));
        lines.stream().filter(line -> done.contains(line.code())).forEach(line -> steps.addAll(line.steps()));
        return steps;
    }

    private boolean waitsFor(WorkLine line, WorkLine other) {
        return waits.getOrDefault(line.code(), Set.of()).contains(other.code());
    }
}
