package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.MarkCheck.WouldReverse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

class MarkCheckPropertyTests {
    record Trial(WorkList list, Random random) {
        @Override
        public String toString() {
            return list.variant().toString();
        }
    }

    @Provide
    Arbitrary<Trial> trials() {
        return Combinators.combine(Arbitraries.of(Variant.all()), Arbitraries.of(true, false), Arbitraries.longs())
                .as((variant, tested, seed) -> new Trial(WorkList.of(variant, tested), new Random(seed)));
    }

    /** Lines are tried in any order, again and again; what is refused is tried later. */
    @Property(tries = 400)
    void whatever_is_accepted_in_any_order_ends_complete_and_without_a_reversed_lap(@ForAll("trials") Trial trial) {
        var list = trial.list();
        Set<String> done = new LinkedHashSet<>();
        for (int round = 0;
                round < list.lines().size() && done.size() < list.lines().size();
                round++)
            shuffled(trial).stream()
                    .filter(line -> accepted(list.check(done, line)))
                    .forEach(line -> done.add(line.code()));

        assertThat(done).hasSameSizeAs(list.lines());
        assertThat(Hands.reversed(list, lines(list, done))).isEmpty();
    }

    /** One line is forced at a random point of a legal order; the hands then do all the rest in the customary order. */
    @Property(tries = 2000)
    void a_refusal_names_a_lap_exactly_when_doing_the_line_would_reverse_one(@ForAll("trials") Trial trial) {
        var list = trial.list();
        Set<String> done = someLegalStart(trial);
        var line = any(
                trial,
                list.lines().stream().filter(l -> !done.contains(l.code())).toList());
        var check = list.check(done, line);

        List<WorkLine> order = new ArrayList<>(lines(list, done));
        order.add(line);
        list.lines().stream().filter(l -> !order.contains(l)).forEach(order::add);
        var wrong = Hands.reversed(list, order);

        Statistics.label("answer").collect(check.getClass().getSimpleName());
        if (check instanceof WouldReverse reverse) assertThat(wrong).contains(reverse.lap());
        else assertThat(wrong).as("%s after %s", line.code(), done).isEmpty();
    }

    private static boolean accepted(MarkCheck check) {
        return check instanceof MarkCheck.Legal || check instanceof MarkCheck.ByRelease;
    }

    private static Set<String> someLegalStart(Trial trial) {
        var list = trial.list();
        Set<String> done = new LinkedHashSet<>();
        int wanted = trial.random().nextInt(list.lines().size());
        while (done.size() < wanted) {
            var line = any(trial, list.lines());
            if (accepted(list.check(done, line))) done.add(line.code());
        }
        return done;
    }

    private static List<WorkLine> shuffled(Trial trial) {
        var lines = new ArrayList<>(trial.list().lines());
        Collections.shuffle(lines, trial.random());
        return lines;
    }

    private static WorkLine any(Trial trial, List<WorkLine> lines) {
        return lines.get(trial.random().nextInt(lines.size()));
    }

    private static List<WorkLine> lines(WorkList list, Set<String> codes) {
        return codes.stream().map(code -> list.line(code).orElseThrow()).toList();
    }

    /** Puts layers on in the order given, whatever the order, and looks afterwards at which lies over which. */
    static final class Hands {
        private static final int BEFORE = -1;

        private final Map<Step, Integer> when = new EnumMap<>(Step.class);

        static List<Lap> reversed(WorkList list, List<WorkLine> order) {
            var hands = new Hands();
            if (list.variant().method().barrierFirst())
                Stream.of(Step.BARRIER_SILL, Step.BARRIER_JAMB, Step.BARRIER_HEAD)
                        .forEach(step -> hands.when.put(step, BEFORE));
            var steps = order.stream().flatMap(line -> line.steps().stream()).toList();
            for (int i = 0; i < steps.size(); i++) hands.when.put(steps.get(i), i);
            return LapGraph.of(list.variant()).laps().stream()
                    .filter(lap -> !hands.right(lap))
                    .toList();
        }

        /** The later of two lies over the earlier, unless it is slid under a free edge or a raised flap. */
        private boolean right(Lap lap) {
            int over = at(lap.over());
            int under = at(lap.under());
            return switch (lap.order()) {
                case NORMAL -> under <= over;
                case TUCK -> under < over || under < edgeBonded(lap.over());
                case FLAP -> step(Step.OPEN_FLAP) < under && under < step(Step.CLOSE_FLAP);
            };
        }

        private int edgeBonded(Layer layer) {
            return switch (layer) {
                case APR -> step(Step.SECURE_APRON);
                case JF -> step(Step.SECURE_JAMB_TAILS);
                default -> step(Step.FINISH_SILL_JOINT);
            };
        }

        private int at(Layer layer) {
            return step(layer.placedBy());
        }

        private int step(Step step) {
            return java.util.Objects.requireNonNull(when.get(step), step::code);
        }
    }
}
