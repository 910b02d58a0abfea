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
import java.util.stream.Collectors;
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

    private final String prefix;
    private final List<Opening> ofSite;
    private final Set<String> marks;
    private final Map<Integer, List<Named>> byRow = new LinkedHashMap<>();

    Naming(String prefix, List<Opening> ofSite, List<RowReader.Reading> readings) {
        this.prefix = prefix;
        this.ofSite = ofSite;
        Map<String, List<RowReader.Reading>> byMark = new LinkedHashMap<>();
        for (var reading : readings)
            reading.row()
                    .ifPresent(row -> byMark.computeIfAbsent(row.mark(), _ -> new ArrayList<>())
                            .add(reading));
        marks = Set.copyOf(byMark.keySet());
        byMark.forEach(this::name);
    }

    /** The openings of a row, in the order of their numbers. */
    List<Named> of(int row) {
        return byRow.getOrDefault(row, List.of());
    }

    private void name(String mark, List<RowReader.Reading> readings) {
        List<Own> free = new ArrayList<>(owned(mark));
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

    /** The site's openings of a mark: its name alone, as number 1, or with a number; not those of a mark that is written so. */
    private List<Own> owned(String mark) {
        return ofSite.stream()
                .map(opening -> new Own(number(mark, opening.id().value()), opening))
                .filter(own -> own.number() > 0)
                .sorted(Comparator.comparingInt(Own::number))
                .collect(Collectors.toList());
    }

    private int number(String mark, String id) {
        String alone = prefix + mark;
        if (id.equals(alone)) return 1;
        if (!id.startsWith(alone + "-")) return 0;
        String number = id.substring(alone.length() + 1);
        boolean anotherMark = id.startsWith(prefix) && marks.contains(id.substring(prefix.length()));
        return number.matches("[1-9]\\d{0,5}") && !anotherMark ? Integer.parseInt(number) : 0;
    }
}
