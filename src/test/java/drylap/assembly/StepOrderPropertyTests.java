package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

class StepOrderPropertyTests {
    record Trial(Variant variant, List<Step> order) {}

    /** Customary orders shaken by a few swaps, so that about as many stay legal as do not. */
    @Provide
    Arbitrary<Trial> orders() {
        return Combinators.combine(
                        Arbitraries.of(Variant.all()),
                        Arbitraries.longs(),
                        Arbitraries.integers().between(0, 40))
                .as((variant, seed, swaps) -> new Trial(variant, shaken(variant, new Random(seed), swaps)));
    }

    private static List<Step> shaken(Variant variant, Random random, int swaps) {
        var order = new ArrayList<>(StepOrder.ofLaps(variant).sequence());
        for (int swap = 0; swap < swaps; swap++) {
            int at = random.nextInt(order.size() - 1);
            boolean keepsLegal = Replay.legal(variant, swapped(order, at));
            if (keepsLegal || random.nextInt(12) == 0) Collections.swap(order, at, at + 1);
        }
        return order;
    }

    private static List<Step> swapped(List<Step> order, int at) {
        var swapped = new ArrayList<>(order);
        Collections.swap(swapped, at, at + 1);
        return swapped;
    }

    @Property(tries = 1000)
    void an_order_is_legal_exactly_when_replaying_finds_each_needed_layer_in_place(@ForAll("orders") Trial trial) {
        boolean legal = Replay.legal(trial.variant(), trial.order());
        Statistics.label("legal").collect(legal);
        Statistics.label("legal").coverage(coverage -> {
            coverage.check(true).percentage(share -> share > 10);
            coverage.check(false).percentage(share -> share > 10);
        });
        assertThat(StepOrder.ofLaps(trial.variant()).allows(trial.order())).isEqualTo(legal);
    }

    /** Handles layers as hands would: knows nothing of precedences, only of what lies where and which edge is free. */
    static final class Replay {
        private final Variant variant;
        private final Set<Layer> placed = EnumSet.noneOf(Layer.class);
        private final Set<Layer> secured = EnumSet.noneOf(Layer.class);
        private boolean cut;
        private boolean closed;

        private Replay(Variant variant) {
            this.variant = variant;
        }

        static boolean legal(Variant variant, List<Step> order) {
            var replay = new Replay(variant);
            return order.stream().allMatch(replay::possible);
        }

        private boolean possible(Step step) {
            return switch (step) {
                case OPEN_FLAP -> placed.contains(Layer.W1H) && (cut = true);
                case CLOSE_FLAP -> cut && placed.contains(Layer.HF) && (closed = true);
                case SECURE_APRON -> secure(Layer.APR);
                case SECURE_JAMB_TAILS -> secure(Layer.JF);
                case FINISH_SILL_JOINT -> secure(Layer.FLS);
                default -> place(step);
            };
        }

        private boolean secure(Layer layer) {
            secured.add(layer);
            return placed.contains(layer)
                    && laps().stream()
                            .filter(lap -> lap.over() == layer && lap.order() == Lap.Order.TUCK)
                            .allMatch(lap -> placed.contains(lap.under()));
        }

        private boolean place(Step step) {
            var put = LapGraph.of(variant).layers().stream()
                    .filter(layer -> layer.placedBy() == step)
                    .toList();
            boolean flapInTheWay = step == Step.SET && variant.method().barrierFirst() && !cut;
            boolean fits = !flapInTheWay && put.stream().allMatch(layer -> fits(layer, put));
            placed.addAll(put);
            return fits;
        }

        private boolean fits(Layer layer, List<Layer> together) {
            return laps().stream().allMatch(lap -> {
                if (lap.over() == layer) return liesOn(lap, together);
                if (lap.under() == layer) return slidesUnder(lap, together);
                return true;
            });
        }

        private boolean liesOn(Lap lap, List<Layer> together) {
            boolean onFlap = lap.under() == Layer.W1H && variant.method().barrierFirst();
            if (onFlap) return closed;
            return switch (lap.order()) {
                case NORMAL -> placed.contains(lap.under()) || together.contains(lap.under());
                case TUCK, FLAP -> !placed.contains(lap.under());
            };
        }

        private boolean slidesUnder(Lap lap, List<Layer> together) {
            return switch (lap.order()) {
                case NORMAL -> !placed.contains(lap.over()) || together.contains(lap.over());
                case TUCK -> placed.contains(lap.over()) && !secured.contains(lap.over());
                case FLAP -> cut && !closed;
            };
        }

        private List<Lap> laps() {
            return LapGraph.of(variant).laps();
        }
    }
}
