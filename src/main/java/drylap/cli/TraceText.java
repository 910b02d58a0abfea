package drylap.cli;

import drylap.assembly.AsBuilt;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.StepOrder;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The trace in words, for someone who stands at the wall. */
final class TraceText {
    private final AsBuilt built;
    private final TraceReport report;
    private final PrintWriter out;

    TraceText(AsBuilt built, StepOrder order, @Nullable Frame frame, PrintWriter out) {
        this.built = built;
        this.report = TraceReport.of(built, order, frame);
        this.out = out;
    }

    void print() {
        out.println("Method %s: %s. Sill: %s. Second layer: %s."
                .formatted(report.method(), says(built.variant().method()), report.approach(), report.secondLayer()));
        steps();
        state();
        section(
                "Water put on the wall runs",
                report.paths().stream().map(TraceReport.Path::words).toList());
        section(
                "Reverse laps",
                report.reverseLaps().isEmpty()
                        ? List.of("none")
                        : report.reverseLaps().stream()
                                .map(TraceReport.ReverseLap::words)
                                .toList());
        if (!report.advice().isEmpty()) section("Advice", report.advice());
        out.println();
        out.println("The maker's instructions and local code come first.");
        out.println(report.safety());
    }

    private static String says(Method method) {
        return "jamb flashing %s the flange, barrier on the wall %s the window"
                .formatted(
                        method.jambFlashingBehindFlange() ? "behind" : "over",
                        method.barrierFirst() ? "before" : "after");
    }

    private void steps() {
        out.println();
        out.println("Steps (x done), and what rain does after each:");
        int number = 0;
        for (var rated : report.ratings()) {
            boolean done = report.done().contains(rated.step());
            out.println("%s %2d  %-10s %-7s %s"
                    .formatted(done ? "x" : " ", ++number, rated.step(), rated.trade(), rated.words()));
            out.println("       %s %s".formatted(rated.rating(), rated.ratingWords()));
        }
        out.println();
        out.println("Begin %s only when everything up to %s fits one dry spell."
                .formatted(
                        report.installBlock().getFirst(), report.installBlock().getLast()));
    }

    private void state() {
        var state = report.state();
        section("As it stands", List.of(state.rating() + " " + state.words(), state.apron()));
        state.weaknesses().forEach(weak -> out.println("  - " + weak.words()));
        if (!report.next().isEmpty()) out.println("  next: " + String.join(" or ", report.next()));
    }

    private void section(String heading, List<String> lines) {
        out.println();
        out.println(heading + ":");
        lines.forEach(text -> out.println("  " + text));
    }
}
