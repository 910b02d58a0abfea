package drylap.crews;

import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Trade;
import java.time.ZoneId;
import java.util.Set;

/** @param methods what a window crew is trained for; empty means every method */
public record Crew(CrewId id, Trade trade, Set<Method> methods, GeoPoint base, ZoneId zone) {
    public Crew {
        methods = Set.copyOf(methods);
    }

    public boolean trainedFor(Method method) {
        return trade != Trade.WINDOW || methods.isEmpty() || methods.contains(method);
    }
}
