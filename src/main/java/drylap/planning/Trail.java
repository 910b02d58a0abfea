package drylap.planning;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The way of a search: from where it goes on, and where it stands, for whoever keeps that so that another can go on. */
public final class Trail {
    private final @Nullable Waypoint from;
    private volatile @Nullable Supplier<Waypoint> place;

    private Trail(@Nullable Waypoint from) {
        this.from = from;
    }

    /** From nothing. */
    public static Trail fresh() {
        return new Trail(null);
    }

    /** From where an earlier search of the same folder stood. */
    public static Trail from(Waypoint from) {
        return new Trail(from);
    }

    public Optional<Waypoint> from() {
        return Optional.ofNullable(from);
    }

    /** The planner's: how to ask from now on where the search stands; on any thread, at any time. */
    public void follow(Supplier<Waypoint> where) {
        place = where;
    }

    /** Where the search stands; nothing before its first plan. Takes time in the measure of the job. */
    public Optional<Waypoint> now() {
        return Optional.ofNullable(place).map(Supplier::get);
    }
}
