package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.Visit;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a proposal changes for those who work by the published plan, from a moment on.
 *
 * @param lines first what comes soonest
 */
public record Differences(List<Line> lines, long same) {
    public enum Kind {
        MOVED,
        ADDED,
        DROPPED
    }

    private record Key(OpeningId opening, Task task) {}

    /** @param was absent where the visit is new; {@code is} absent where it falls away */
    public record Line(
            Kind kind, @Nullable Visit was, @Nullable Visit is) {
        public Visit either() {
            return is != null ? is : Objects.requireNonNull(was);
        }

        Instant soonest() {
            return Stream.of(was, is)
                    .filter(Objects::nonNull)
                    .map(Visit::start)
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    /** Visits of the published plan that begin before {@code from} are past: nothing can change them. */
    public static Differences between(Plan published, Plan proposal, Instant from) {
        Map<Key, Visit> before = byKey(published, from);
        Map<Key, Visit> after = byKey(proposal, from);
        Stream<Line> ofBefore = before.entrySet().stream().map(one -> line(one.getValue(), after.get(one.getKey())));
        Stream<Line> added = after.entrySet().stream()
                .filter(one -> !before.containsKey(one.getKey()))
                .map(one -> new Line(Kind.ADDED, null, one.getValue()));
        List<Line> all = Stream.concat(ofBefore, added).toList();
        List<Line> changed = all.stream()
                .filter(line -> !same(line))
                .sorted(Comparator.comparing(Line::soonest))
                .toList();
        return new Differences(changed, all.size() - changed.size());
    }

    public long count(Kind kind) {
        return lines.stream().filter(line -> line.kind() == kind).count();
    }

    private static Line line(Visit was, @Nullable Visit is) {
        return new Line(is == null ? Kind.DROPPED : Kind.MOVED, was, is);
    }

    private static boolean same(Line line) {
        Visit was = line.was();
        Visit is = line.is();
        return was != null
                && is != null
                && was.crew().equals(is.crew())
                && was.start().equals(is.start())
                && was.end().equals(is.end());
    }

    private static Map<Key, Visit> byKey(Plan plan, Instant from) {
        Map<Key, Visit> visits = new HashMap<>();
        for (Visit visit : plan.visits())
            if (!visit.start().isBefore(from)) visits.put(new Key(visit.opening(), visit.task()), visit);
        return visits;
    }
}
