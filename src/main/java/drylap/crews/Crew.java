package drylap.crews;

import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Trade;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * @param methods what a window crew is trained for; empty means every method
 * @param people how many they are; none: not told. For whoever reads a sheet: minutes of work are those of the labour table
 */
public record Crew(
        CrewId id,
        Trade trade,
        Set<Method> methods,
        GeoPoint base,
        ZoneId zone,
        @Nullable Integer people) {
    public static final int FEWEST_PEOPLE = 1;
    public static final int MOST_PEOPLE = 20;

    public Crew {
        methods = Set.copyOf(methods);
        if (people != null && (people < FEWEST_PEOPLE || people > MOST_PEOPLE))
            throw new IllegalArgumentException(
                    "a crew of %d people is outside %d..%d".formatted(people, FEWEST_PEOPLE, MOST_PEOPLE));
    }

    /** A crew of which nobody said how many they are. */
    public Crew(CrewId id, Trade trade, Set<Method> methods, GeoPoint base, ZoneId zone) {
        this(id, trade, methods, base, zone, null);
    }

    public boolean trainedFor(Method method) {
        return trade != Trade.WINDOW || methods.isEmpty() || methods.contains(method);
    }
}
