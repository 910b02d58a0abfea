package drylap.windowschedule;

import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.windowschedule.Choices.StandIns;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** With which choices an import begins: what most openings of the site have, for a person to change; nothing where it has none. */
public final class Starts {
    private Starts() {}

    public static Choices of(JobFolder folder, SiteId site) {
        List<Opening> there = folder.openings().stream()
                .filter(opening -> opening.facade().site().equals(site))
                .toList();
        var standIns = new StandIns(
                null,
                null,
                most(there, Opening::frame),
                most(there, Opening::method),
                most(there, Opening::approach),
                most(there, Opening::secondLayer),
                there.stream()
                        .map(Opening::deliveredOn)
                        .max(Comparator.naturalOrder())
                        .orElse(null),
                false,
                0);
        return new Choices(site, null, null, Map.of(), Map.of(), standIns, "");
    }

    private static <T extends Comparable<T>> @Nullable T most(List<Opening> openings, Function<Opening, T> what) {
        Map<T, Long> counts = openings.stream().collect(Collectors.groupingBy(what, Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.<T, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(null);
    }
}
