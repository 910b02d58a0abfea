package drylap.assembly;

import drylap.speech.Saying;
import java.util.List;
import java.util.Optional;

/** The way of water that is put on the wall at one place, layer by layer down to where it ends. */
public record WaterPath(Start start, List<Leg> legs, End end) {
    /** Where the water is put on. */
    public enum Start {
        HEAD("at the head"),
        JAMB("at a jamb"),
        SILL("at the sill");

        private final String words;

        Start(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** A layer that the water meets, and on which side of it the water runs. */
    public record Leg(Layer layer, Side side) {}

    public enum Side {
        OUTER_FACE,
        BEHIND,
        /** Kept out by the bond of an exposed edge only. */
        HELD_BY_BOND
    }

    public enum End {
        DRAINS_OUTSIDE("drains out", false),
        DRAINS_BETWEEN_BARRIERS("drains between the barriers", false),
        DRIPS_ON_BARE_WALL("drips clear on to the wall below, which has no barrier yet", false),
        ENTERS_WALL("reaches the wall", true),
        ENTERS_OPENING("enters the opening", true);

        private final String words;
        private final boolean inside;

        End(String words, boolean inside) {
            this.words = words;
            this.inside = inside;
        }

        public String words() {
            return words;
        }

        public boolean inside() {
            return inside;
        }
    }

    /** The first layer that lets the water past, if one does. */
    public Optional<Layer> failsAt() {
        return legs.stream()
                .filter(leg -> leg.side() == Side.BEHIND)
                .map(Leg::layer)
                .findFirst()
                .or(() -> end == End.ENTERS_OPENING ? Optional.of(Layer.RO) : Optional.empty());
    }

    public boolean heldByBond() {
        return legs.stream().anyMatch(leg -> leg.side() == Side.HELD_BY_BOND);
    }

    public Saying saying() {
        var way = Saying.list(", ", legs.stream().map(WaterPath::saying).toList());
        return Saying.of("{0}: {1}; {2}", Saying.of(start.words()), way, Saying.of(end.words()));
    }

    public String words() {
        return saying().words();
    }

    private static Saying saying(Leg leg) {
        var layer =
                leg.layer() == Layer.RO ? Saying.of("bare wall") : leg.layer().saying();
        return switch (leg.side()) {
            case OUTER_FACE -> layer;
            case BEHIND -> Saying.of("BEHIND the {0}", layer);
            case HELD_BY_BOND -> Saying.of("{0} (held by the bond of its edge)", layer);
        };
    }
}
