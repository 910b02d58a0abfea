package drylap.assembly;

import drylap.assembly.StepList.ListedStep;
import drylap.kernel.Trade;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Puts the lines together: the window crew's numbered list, then what else the step order holds, trade by trade. */
final class WorkLines {
    private final Variant variant;
    private final StepOrder order;
    private final List<WorkLine> lines = new ArrayList<>();

    private WorkLines(Variant variant, StepOrder order) {
        this.variant = variant;
        this.order = order;
    }

    static List<WorkLine> of(Variant variant, StepOrder order) {
        var lines = new WorkLines(variant, order);
        StepList.of(variant.method(), variant.approach()).steps().forEach(lines::addListed);
        lines.addOthers();
        return List.copyOf(lines.lines);
    }

    private void addListed(ListedStep listed) {
        var steps = new ArrayList<>(ListedWork.stepsOf(variant, listed.number()));
        // Closing the flap is the crew's to tick, the release that goes with it is not: that becomes a line of its own.
        if (steps.size() > 1) steps.remove(Step.RELEASE);
        lines.add(new WorkLine(
                code(listed, steps),
                listed.text(),
                Trade.WINDOW,
                steps,
                listed.install(),
                OptionalInt.of(listed.number())));
    }

    private static String code(ListedStep listed, List<Step> steps) {
        return steps.isEmpty()
                ? StepList.word(listed)
                : steps.stream().map(Step::code).collect(Collectors.joining("+"));
    }

    private void addOthers() {
        var listed = EnumSet.noneOf(Step.class);
        listed.addAll(ListedWork.onTheWallBefore(variant));
        lines.forEach(line -> listed.addAll(line.steps()));
        for (var trade : Trade.values())
            order.sequence().stream()
                    .filter(step -> step.trade() == trade && !listed.contains(step))
                    .map(WorkLines::ofStep)
                    .forEach(lines::add);
    }

    private static WorkLine ofStep(Step step) {
        return new WorkLine(step.code(), step.words(), step.trade(), List.of(step), false, OptionalInt.empty());
    }
}
