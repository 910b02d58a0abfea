package drylap.cli;

import drylap.assembly.Advice;
import drylap.assembly.AsBuilt;
import drylap.assembly.Frame;
import drylap.assembly.InstallBlock;
import drylap.assembly.Lap;
import drylap.assembly.LapGraph;
import drylap.assembly.LapVerdict;
import drylap.assembly.Layer;
import drylap.assembly.RainCheck;
import drylap.assembly.RecordedLap;
import drylap.assembly.Step;
import drylap.assembly.StepOrder;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterTrace;
import drylap.speech.Saying;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code trace --json} writes; steps and layers stand as codes. */
record TraceReport(
        String method,
        String approach,
        String secondLayer,
        List<Edge> edges,
        List<String> steps,
        List<Rated> ratings,
        List<String> installBlock,
        List<String> done,
        List<String> next,
        State state,
        List<Path> paths,
        List<ReverseLap> reverseLaps,
        boolean closesRing,
        List<String> advice,
        String safety) {

    record Edge(String over, String under, String kind, String order) {
        static Edge of(Lap lap) {
            return new Edge(
                    lap.over().code(),
                    lap.under().code(),
                    lap.kind().code(),
                    lap.order().code());
        }
    }

    record Rated(String step, String trade, String words, String rating, String ratingWords) {}

    record State(String rating, String words, List<Weak> weaknesses, String apron) {}

    record Weak(String atBest, String layer, String words) {}

    record Path(
            String start,
            List<Leg> legs,
            String end,
            @Nullable String failsAt,
            String words) {
        static Path of(WaterPath path) {
            return new Path(
                    path.start().name().toLowerCase(java.util.Locale.ROOT),
                    path.legs().stream().map(Leg::of).toList(),
                    path.end().name().toLowerCase(java.util.Locale.ROOT),
                    path.failsAt().map(Layer::code).orElse(null),
                    path.words());
        }
    }

    record Leg(String layer, String side) {
        static Leg of(WaterPath.Leg leg) {
            return new Leg(leg.layer().code(), leg.side().name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    /** {@code over} and {@code under} as found on the wall, beside the lap as it has to be. */
    record ReverseLap(String over, String under, Edge required, String words) {}

    static TraceReport of(AsBuilt built, StepOrder order, @Nullable Frame frame) {
        var variant = built.variant();
        var graph = LapGraph.of(variant);
        return new TraceReport(
                variant.method().code(),
                variant.approach().code(),
                variant.secondLayer().code(),
                graph.laps().stream().map(Edge::of).toList(),
                codes(order.sequence()),
                ratings(built, order),
                codes(InstallBlock.of(variant).steps()),
                codes(order.sequence().stream().filter(built.done()::contains).toList()),
                codes(order.next(built.done())),
                state(built),
                WaterTrace.of(built).stream().map(Path::of).toList(),
                graph.reversed(built.recordedLaps()).stream()
                        .map(TraceReport::reverse)
                        .toList(),
                LapGraph.closesRing(built.recordedLaps()),
                frame == null
                        ? List.of()
                        : Advice.of(frame, variant.approach()).stream()
                                .map(Saying::words)
                                .toList(),
                Commands.NOT_A_SAFETY_STATEMENT);
    }

    /** The rating after each step of the order, with the reversed laps as far as they are built by then. */
    static List<Rated> ratings(AsBuilt built, StepOrder order) {
        var sequence = order.sequence();
        return sequence.stream()
                .map(step -> {
                    var done = sequence.subList(0, sequence.indexOf(step) + 1);
                    var rating = RainCheck.of(AsBuilt.of(built.variant(), done)
                                    .withReversed(built.reversed())
                                    .under(built.conditions()))
                            .rating();
                    return new Rated(step.code(), step.trade().code(), step.words(), rating.code(), rating.words());
                })
                .toList();
    }

    private static State state(AsBuilt built) {
        var check = RainCheck.of(built);
        var weaknesses = check.weaknesses().stream()
                .map(weak -> new Weak(weak.atBest().code(), weak.at().code(), weak.words()))
                .toList();
        return new State(
                check.rating().code(),
                check.rating().words(),
                weaknesses,
                built.apron().words());
    }

    private static ReverseLap reverse(LapVerdict.Reversed found) {
        var required = found.required();
        var asFound = new RecordedLap(required.under(), required.over());
        return new ReverseLap(asFound.over().code(), asFound.under().code(), Edge.of(required), found.words());
    }

    private static List<String> codes(Collection<Step> steps) {
        return steps.stream().map(Step::code).toList();
    }
}
