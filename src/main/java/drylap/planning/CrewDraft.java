package drylap.planning;

import drylap.kernel.GeoPoint;
import drylap.kernel.Trade;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * A crew as somebody describes it by hand; a window crew made so is trained for every method.
 *
 * @param people how many they are; none: not told
 */
public record CrewDraft(
        String name,
        Trade trade,
        GeoPoint base,
        ZoneId zone,
        @Nullable Integer people,
        CrewDays days) {
    public CrewDraft {
        name = name.strip();
    }
}
