package drylap.takeoff;

import drylap.kernel.CrewId;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the window crews of a day load together, as it is got ready in the yard.
 *
 * @param byCrew whose sum it is; cartridges are rounded up for each van, and for all together once
 */
public record DayList(LocalDate date, Map<CrewId, Sums> byCrew, Supplies supplies) {
    public DayList {
        byCrew = Collections.unmodifiableMap(new TreeMap<>(byCrew));
    }
}
