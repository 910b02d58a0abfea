package drylap.cli;

import drylap.assembly.Approach;
import drylap.assembly.AsBuilt;
import drylap.assembly.Conditions;
import drylap.assembly.Frame;
import drylap.assembly.Lap;
import drylap.assembly.LapGraph;
import drylap.assembly.LapSection;
import drylap.assembly.Layer;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.Step;
import drylap.assembly.StepOrder;
import drylap.assembly.Variant;
import drylap.kernel.Coded;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

@Command(
        name = "trace",
        description = {
            "Shows the layers of an opening: in which order they go on, what rain does after each step, where water "
                    + "runs, and which laps are the wrong way round.",
            "Layers and steps have short codes; without --json or --svg the text explains each."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:done", "2:bad input: the message says what is accepted"})
final class TraceCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(
            names = "--method",
            required = true,
            paramLabel = "METHOD",
            description = "A, A1, B or B1 of ASTM E2112: A = jamb flashing over the flange, B = behind it; "
                    + "1 = the barrier is on the wall before the window.")
    @Nullable
    Method method;

    @Option(
            names = "--approach",
            required = true,
            paramLabel = "APPROACH",
            description = "drainage = with a sill pan that drains; barrier = sealed on all four sides.")
    @Nullable
    Approach approach;

    @Option(
            names = "--second-layer",
            paramLabel = "LAYER",
            description = "none (default), tuck = a second barrier will be tucked under the apron, "
                    + "drain-between = the two barriers drain between them.")
    SecondLayer secondLayer = SecondLayer.NONE;

    @Option(
            names = "--after",
            paramLabel = "STEP",
            description = "The opening as it stands after this step, by its code; default: finished.")
    @Nullable
    Step after;

    @Option(
            names = "--reverse",
            paramLabel = "OVER,UNDER",
            description = "The lap of these two layers was built the wrong way round; may be given again.")
    List<String> reverse = List.of();

    @Option(
            names = "--frame",
            paramLabel = "FRAME",
            description = "wood, aluminum, vinyl or fiberglass: adds advice on the sill.")
    @Nullable
    Frame frame;

    @Option(names = "--water-test", description = "The opening is water-tested before anything covers its laps.")
    boolean waterTest;

    @Option(names = "--windy", description = "Wind can lift a free edge.")
    boolean windy;

    @Option(
            names = "--loose-head-edge",
            description = "The top edge of the head flashing is neither bonded nor sealed.")
    boolean looseHeadEdge;

    @ArgGroup
    Form form = new Form();

    static final class Form {
        @Option(names = "--json", description = "As JSON.")
        boolean json;

        @Option(names = "--svg", description = "As a drawing of head, jamb and sill.")
        boolean svg;
    }

    @Override
    public Integer call() {
        var variant = new Variant(Objects.requireNonNull(method), Objects.requireNonNull(approach), secondLayer);
        var order = waterTest ? StepOrder.withWaterTest(variant) : StepOrder.of(variant);
        var sequence = order.sequence();
        var conditions = new Conditions(!looseHeadEdge, true, windy);
        var built = new AsBuilt(variant, done(sequence, variant), reversed(variant), conditions);
        var out = line().getOut();
        if (form.svg) out.print(new LapSection(built, LapSection.Layout.WIDE, LapSection.Colours.FILE).svg());
        else if (form.json) out.println(json(TraceReport.of(built, order, frame)));
        else new TraceText(built, order, frame, out).print();
        out.flush();
        return ExitCodes.DONE;
    }

    private static String json(TraceReport report) {
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build()
                .writeValueAsString(report);
    }

    private Set<Step> done(List<Step> sequence, Variant variant) {
        if (after == null) return Set.copyOf(sequence);
        int index = sequence.indexOf(after);
        if (index < 0)
            throw bad("--after %s: %s has no such step; accepted: %s"
                    .formatted(
                            after.code(),
                            variant,
                            sequence.stream().map(Step::code).collect(Collectors.joining(", "))));
        return Set.copyOf(sequence.subList(0, index + 1));
    }

    /** A junction has one right direction only, so the two layers name it in either order. */
    private Set<Lap> reversed(Variant variant) {
        var graph = LapGraph.of(variant);
        var laps = new HashSet<Lap>();
        for (var pair : reverse) {
            var codes = pair.split(",", -1);
            if (codes.length != 2) throw bad("--reverse %s: accepted: two layers as OVER,UNDER".formatted(pair));
            laps.add(graph.between(layer(pair, codes[0]), layer(pair, codes[1]))
                    .orElseThrow(() -> bad("--reverse %s: these layers do not meet in %s; accepted: %s"
                            .formatted(pair, variant, junctions(graph)))));
        }
        return laps;
    }

    private Layer layer(String pair, String code) {
        return Coded.parse(Layer.class, code.strip())
                .orElseThrow(() -> bad("--reverse %s: '%s' is not a layer; accepted: %s"
                        .formatted(pair, code, Coded.codes(Layer.class))));
    }

    private static String junctions(LapGraph graph) {
        return graph.laps().stream()
                .map(lap -> lap.over().code() + "," + lap.under().code())
                .collect(Collectors.joining(" "));
    }

    private ParameterException bad(String message) {
        return new ParameterException(line(), message);
    }

    private picocli.CommandLine line() {
        return Objects.requireNonNull(spec).commandLine();
    }
}
