package drylap.planning;

import drylap.kernel.GeoPoint;
import drylap.kernel.Trade;
import java.time.ZoneId;

/** A crew as somebody describes it by hand; a window crew made so is trained for every method. */
public record CrewDraft(String name, Trade trade, GeoPoint base, ZoneId zone, CrewDays days) {
    public CrewDraft {
        name = name.strip();
    }
}
