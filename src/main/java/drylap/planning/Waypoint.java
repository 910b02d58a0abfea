package drylap.planning;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a search stands: all that it takes to go on from there. Not a plan, but what its best plan is decoded from.
 *
 * @param medium and {@code soft}: the cost of that plan
 * @param days which region of a large job has which crew on which day; none for a job that is not cut
 * @param turns what each crew does, in its order
 */
public record Waypoint(long medium, long soft, List<Day> days, List<Turn> turns) {
    public Waypoint {
        days = List.copyOf(days);
        turns = List.copyOf(turns);
    }

    /** A crew's shift that a region has. */
    public record Day(int region, CrewId crew, LocalDate date) {}

    /**
     * What a crew does next: neighbouring openings of a course.
     *
     * @param openings all of them, in their order: some may be done by the time that somebody goes on
     * @param notBefore how long it waits with it; absent: it begins as early as it can
     */
    public record Turn(
            int region,
            CrewId crew,
            List<OpeningId> openings,
            Task task,
            @Nullable Instant notBefore) {
        public Turn {
            openings = List.copyOf(openings);
        }
    }

    /** Whether the plan here costs less than that of another. */
    public boolean betterThan(Waypoint other) {
        return medium < other.medium || medium == other.medium && soft < other.soft;
    }
}
