package drylap.season;

import drylap.climate.KnownTimes;
import drylap.climate.MinuteAxis;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The weekly shifts of a trade's crews, which go on as in each crew's last seven days; the time at the site is what counts. */
final class WorkingWeek {
    private static final int WEEK = 7;

    /** The same hours of so many crews. */
    record Hours(Shift shift, int crews) {}

    /** Minutes of one day within which so many crews may work. */
    record Stretch(int from, int until, int crews) {}

    final int crews;
    private final Map<DayOfWeek, List<Shift>> shifts = new EnumMap<>(DayOfWeek.class);
    private final int before;
    private final int after;

    /**
     * @param site its place among the folder's
     * @param setup minutes at the site before the day's work begins
     */
    WorkingWeek(JobFolder folder, Trade trade, int site, int setup) {
        List<Crew> working = folder.crews().stream()
                .filter(crew -> crew.trade() == trade)
                .filter(crew -> !lastWeek(folder, crew).isEmpty())
                .toList();
        crews = working.size();
        for (Crew crew : working)
            for (Shift shift : lastWeek(folder, crew))
                shifts.computeIfAbsent(shift.date().getDayOfWeek(), _ -> new ArrayList<>())
                        .add(shift);
        before = setup
                + mean(working.stream()
                        .mapToInt(crew -> folder.wayOut(crew)[site])
                        .toArray());
        after = mean(
                working.stream().mapToInt(crew -> folder.wayBack(crew)[site]).toArray());
    }

    private static int mean(int[] minutes) {
        return (int) Math.ceil(Arrays.stream(minutes).average().orElse(0));
    }

    private static List<Shift> lastWeek(JobFolder folder, Crew crew) {
        List<Shift> own = folder.shifts().stream()
                .filter(shift -> shift.crew().equals(crew.id()))
                .sorted(Comparator.comparing(Shift::date))
                .toList();
        if (own.isEmpty()) return own;
        LocalDate last = own.getLast().date();
        return own.stream()
                .filter(shift -> shift.date().isAfter(last.minusDays(WEEK)))
                .toList();
    }

    /** How many of them come on a day. */
    int coming(LocalDate date) {
        return shifts.getOrDefault(date.getDayOfWeek(), List.of()).size();
    }

    /** What of the day's shifts lies in the light, or in whatever else is known, and not before the start. */
    List<Stretch> stretches(LocalDate date, KnownTimes known, MinuteAxis axis, int start) {
        List<Stretch> found = new ArrayList<>();
        for (Hours hours : alike(date)) {
            Shift shift = hours.shift();
            int from = Math.max(start, axis.ceil(shift.startsAt()) + before);
            int until = axis.floor(shift.endsAt()) - after;
            for (int[] part :
                    parts(from, until, minute(shift, shift.breakStart(), axis), minute(shift, shift.breakEnd(), axis)))
                known.within(part[0], part[1], (a, b) -> found.add(new Stretch(a, b, hours.crews())));
        }
        return found;
    }

    private List<Hours> alike(LocalDate date) {
        Map<List<@Nullable Object>, List<Shift>> groups = new java.util.LinkedHashMap<>();
        for (Shift shift : shifts.getOrDefault(date.getDayOfWeek(), List.of()))
            groups.computeIfAbsent(key(shift), _ -> new ArrayList<>()).add(shift.on(date));
        return groups.values().stream()
                .map(group -> new Hours(group.getFirst(), group.size()))
                .toList();
    }

    private static List<@Nullable Object> key(Shift shift) {
        return Arrays.asList(shift.start(), shift.end(), shift.breakStart(), shift.breakEnd(), shift.zone());
    }

    private static int minute(Shift shift, @Nullable LocalTime time, MinuteAxis axis) {
        return time == null ? MinuteAxis.NEVER : axis.ceil(shift.at(time));
    }

    private static List<int[]> parts(int from, int until, int breakFrom, int breakUntil) {
        if (breakFrom >= until || breakUntil <= from) return List.of(new int[] {from, until});
        return List.of(new int[] {from, breakFrom}, new int[] {Math.max(from, breakUntil), until});
    }
}
