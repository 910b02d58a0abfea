package drylap.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was asked for and confirmed beside what is in the database. An operation is named by what it does, so that the same name stands on both
 * sides; one that was asked for and not confirmed may be there or not.
 *
 * @param lost confirmed, and not there
 * @param doubled there more often than it was asked for, and be it once where nobody asked
 */
record Comparison(List<String> lost, List<String> doubled) {
    /** @param found how often each is in the database */
    static Comparison of(Set<String> asked, Set<String> confirmed, Map<String, Long> found) {
        List<String> lost = confirmed.stream()
                .filter(one -> !found.containsKey(one))
                .sorted()
                .toList();
        List<String> doubled = new ArrayList<>();
        found.forEach((one, times) -> {
            if (times > (asked.contains(one) ? 1 : 0)) doubled.add("%s (%d times)".formatted(one, times));
        });
        return new Comparison(lost, doubled.stream().sorted().toList());
    }

    boolean clean() {
        return lost.isEmpty() && doubled.isEmpty();
    }
}
