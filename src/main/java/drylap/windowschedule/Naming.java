package drylap.windowschedule;

import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which openings the rows of a schedule are. A mark alone names one opening; several of it are numbered: and so on. Those that the site
 * has keep their names: first each row takes those of its mark on its own facade and level, then what is left of the mark; only then
 * new names are made, with the numbers after the highest.
 */
final class Naming {
    /** @param now as the site has it; none for a new opening */
    record Named(OpeningId id, @Nullable Opening now) {}

    private record Own(int number, Opening opening) {}

    private static final Pattern NUMBERED = Pattern.compile("(.+)-([1-9]\\d{0,5})");

    private final String prefix;
    private final Map<String, List<Own>> owned;
    private final Set<String> marks;
    private final Map<Integer, List<Named>> byRow = new LinkedHashMap<>();

    Naming(String prefix, List<Opening> ofSite, List<RowReader.Reading> readings) {
        this.prefix = prefix;
        Map<String, List<RowReader.Reading>> byMark = new LinkedHashMap<>();
        for (var reading : readings)
            reading.row()
                    .ifPresent(row -> byMark.computeIfAbsent(row.mark(), _ -> new ArrayList<>())
                            .add(reading));
        marks = Set.copyOf(byMark.keySet());
        owned = owned(ofSite);
        byMark.forEach(this::name);
    }

    /** The openings of a row, in the order of their numbers. */
    List<Named> of(int row) {
        return byRow.getOrDefault(row, List.of());
    }

    private void name(String mark, List<RowReader.Reading> readings) {
        List<Own> free = new ArrayList<>(owned.getOrDefault(mark, List.of()));
        int highest = free.stream().mapToInt(Own::number).max().orElse(0);
        Map<Integer, List<Named>> taken = new HashMap<>();
        for (boolean samePlace : new boolean[] {true, false})
            for (var reading : readings) takeOver(reading, free, samePlace, taken);
        int wanted =
                readings.stream().mapToInt(reading -> row(reading).quantity()).sum();
        boolean alone = wanted == 1 && highest == 0;
        for (var reading : readings) {
            List<Named> named = taken.computeIfAbsent(row(reading).number(), _ -> new ArrayList<>());
            while (named.size() < row(reading).quantity())
                named.add(new Named(new OpeningId(alone ? prefix + mark : prefix + mark + "-" + ++highest), null));
            byRow.put(row(reading).number(), named);
        }
    }

    private static void takeOver(
            RowReader.Reading reading, List<Own> free, boolean samePlace, Map<Integer, List<Named>> taken) {
        List<Named> named = taken.computeIfAbsent(row(reading).number(), _ -> new ArrayList<>());
        for (Own own : List.copyOf(free)) {
            if (named.size() == row(reading).quantity()) return;
            if (samePlace && !atItsPlace(reading, own.opening())) continue;
            named.add(new Named(own.opening().id(), own.opening()));
            free.remove(own);
        }
    }

    private static boolean atItsPlace(RowReader.Reading reading, Opening opening) {
        ReadRow row = row(reading);
        return (reading.stoodIn().contains(Field.ELEVATION) || row.facade().equals(opening.facade()))
                && (reading.stoodIn().contains(Field.LEVEL) || row.level() == opening.level());
    }

    private static ReadRow row(RowReader.Reading reading) {
        return reading.row().orElseThrow();
    }

    /** Each of the site's openings with its mark: the name alone is number 1 of it, unless a mark is written so with its number. */
    private Map<String, List<Own>> owned(List<Opening> ofSite) {
        Map<String, List<Own>> owned = new HashMap<>();
        for (Opening opening : ofSite) {
            String id = opening.id().value();
            if (!id.startsWith(prefix)) continue;
            String rest = id.substring(prefix.length());
            Matcher numbered = NUMBERED.matcher(rest);
            if (marks.contains(rest)) add(owned, rest, new Own(1, opening));
            else if (numbered.matches())
                add(owned, numbered.group(1), new Own(Integer.parseInt(numbered.group(2)), opening));
        }
        owned.values().forEach(all -> all.sort(Comparator.comparingInt(Own::number)));
        return owned;
    }

    private static void add(Map<String, List<Own>> owned, String mark, Own own) {
        owned.computeIfAbsent(mark, _ -> new ArrayList<>()).add(own);
    }
}
