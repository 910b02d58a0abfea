package drylap.assembly;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The laps that one variant requires, and the check of what was found on the wall against them. */
public record LapGraph(Variant variant, List<Lap> laps) {
    private static final Map<Variant, LapGraph> KNOWN = new ConcurrentHashMap<>();

    public static LapGraph of(Variant variant) {
        return KNOWN.computeIfAbsent(variant, v -> new LapGraph(v, LapTable.of(v)));
    }

    /** The layers of the wall that this variant has, beds and the air seal aside. */
    public Set<Layer> layers() {
        var layers = EnumSet.noneOf(Layer.class);
        laps.forEach(lap -> {
            layers.add(lap.over());
            layers.add(lap.under());
        });
        return layers;
    }

    public Optional<Lap> between(Layer one, Layer other) {
        return laps.stream().filter(lap -> lap.joins(one, other)).findFirst();
    }

    Stream<Lap> under(Layer over) {
        return laps.stream().filter(lap -> lap.over() == over);
    }

    Stream<Lap> over(Layer under) {
        return laps.stream().filter(lap -> lap.under() == under);
    }

    /** Compares the direction: a reversed lap mostly closes no ring, so a search for rings alone would miss it. */
    public LapVerdict check(RecordedLap recorded) {
        return between(recorded.over(), recorded.under())
                .<LapVerdict>map(required -> required.over() == recorded.over()
                        ? new LapVerdict.Right(required)
                        : new LapVerdict.Reversed(required))
                .orElseGet(() -> new LapVerdict.NoSuchJunction(recorded));
    }

    public List<LapVerdict.Reversed> reversed(Collection<RecordedLap> recorded) {
        return recorded.stream()
                .map(this::check)
                .filter(LapVerdict.Reversed.class::isInstance)
                .map(LapVerdict.Reversed.class::cast)
                .toList();
    }

    /** The second net: whether layers that each lie over the next close a ring, which no wall can have. */
    public static boolean closesRing(Collection<RecordedLap> recorded) {
        var left = new HashSet<>(recorded);
        boolean peeled = true;
        while (peeled) {
            var overs = left.stream().map(RecordedLap::over).toList();
            peeled = left.removeIf(lap -> !overs.contains(lap.under()));
        }
        return !left.isEmpty();
    }

    /** Whether {@code outer} lies over {@code inner}, directly or through layers between. */
    boolean outboard(Layer outer, Layer inner) {
        return under(outer).anyMatch(lap -> lap.under() == inner || outboard(lap.under(), inner));
    }
}
