package drylap.planning.solver;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Waypoint;
import drylap.planning.Waypoint.Day;
import drylap.planning.Waypoint.Turn;
import drylap.planning.solver.CrewShares.CrewDate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes down where the searches of a job's regions stand, and lays what was written down over lists made anew. */
final class Waypoints {
    private record Work(OpeningId opening, Task task) {}

    private final CrewLists lists;
    private final Map<Work, Unit> units = new HashMap<>();
    private final Map<CrewId, Route> routes = new HashMap<>();
    private final BitSet placed = new BitSet();

    private Waypoints(CrewLists over) {
        lists = new CrewLists.Cloner().cloneSolution(over);
        for (Unit unit : lists.getUnits())
            for (WorkTask task : unit.tasks) units.put(new Work(task.opening.id(), unit.kind), unit);
        for (Route route : lists.getRoutes()) {
            routes.put(route.crew().crew.id(), route);
            route.getUnits().clear();
        }
    }

    static Waypoint of(List<RegionSearch> searches) {
        List<RegionSearch.Best> best = searches.stream().map(RegionSearch::best).toList();
        List<Day> days = new ArrayList<>();
        List<Turn> turns = new ArrayList<>();
        for (int region = 0; region < best.size(); region++) {
            if (best.size() > 1)
                addDays(region, best.get(region).lists().problem().folder(), days);
            addTurns(region, best.get(region).lists(), turns);
        }
        return new Waypoint(
                best.stream().mapToLong(one -> -one.score().mediumScore()).sum(),
                best.stream().mapToLong(one -> -one.score().softScore()).sum(),
                days,
                turns);
    }

    private static void addDays(int region, JobFolder folder, List<Day> days) {
        for (Shift shift : folder.shifts()) days.add(new Day(region, shift.crew(), shift.date()));
    }

    private static void addTurns(int region, CrewLists lists, List<Turn> turns) {
        TimeAxis axis = lists.problem().axis();
        for (Route route : lists.getRoutes())
            for (Unit unit : route.getUnits()) {
                int wait = lists.notBefore[unit.index];
                turns.add(new Turn(
                        region,
                        route.crew().crew.id(),
                        Arrays.stream(unit.tasks).map(task -> task.opening.id()).toList(),
                        unit.kind,
                        wait > 0 ? axis.at(wait) : null));
            }
    }

    /** The regions with the days that they had lent each other by then. What people have published is never lent. */
    static List<JobFolder> regions(List<JobFolder> cut, JobFolder folder, Waypoint from) {
        boolean published = cut.stream().anyMatch(region -> !region.published().isEmpty());
        int regions = from.days().stream().mapToInt(Day::region).max().orElse(0) + 1;
        if (published || cut.size() < 2 || regions != cut.size()) return cut;
        Map<CrewDate, Integer> had = new HashMap<>();
        for (Day day : from.days()) had.put(new CrewDate(day.crew(), day.date()), day.region());
        List<List<Shift>> shifts =
                cut.stream().<List<Shift>>map(_ -> new ArrayList<>()).toList();
        for (int region = 0; region < cut.size(); region++)
            for (Shift shift : cut.get(region).shifts())
                shifts.get(had.getOrDefault(new CrewDate(shift.crew(), shift.date()), region))
                        .add(shift);
        List<JobFolder> again = new ArrayList<>();
        for (int region = 0; region < cut.size(); region++)
            again.add(with(cut.get(region), shifts.get(region), folder.crews()));
        return again;
    }

    private static JobFolder with(JobFolder region, List<Shift> shifts, List<Crew> all) {
        List<CrewId> come = shifts.stream().map(Shift::crew).toList();
        List<Crew> crews = all.stream()
                .filter(crew -> region.crews().contains(crew) || come.contains(crew.id()))
                .toList();
        return region.withCrews(crews).withShifts(shifts);
    }

    /**
     * The lists of a region as they stood, or those made anew where these cost less: much may have been done since. What was not to be
     * done then comes last.
     */
    static Decoded goOn(Decoded anew, int region, Waypoint from) {
        Waypoints again = new Waypoints(anew.lists());
        for (Turn turn : from.turns()) if (turn.region() == region) again.put(turn);
        if (again.placed.isEmpty()) return anew;
        again.addRest(anew.lists());
        return Decoded.of(again.lists).orBetter(anew);
    }

    private void put(Turn turn) {
        Route route = routes.get(turn.crew());
        if (route == null) return;
        Instant wait = turn.notBefore();
        for (OpeningId opening : turn.openings()) {
            Unit unit = units.get(new Work(opening, turn.task()));
            if (unit == null || placed.get(unit.index) || !unit.fits(route.crew())) continue;
            placed.set(unit.index);
            route.getUnits().add(unit);
            lists.notBefore[unit.index] =
                    wait == null ? 0 : lists.problem().axis().ceil(wait);
        }
    }

    private void addRest(CrewLists anew) {
        for (Route route : anew.getRoutes())
            for (Unit unit : route.getUnits())
                if (!placed.get(unit.index)) {
                    Route same = routes.get(route.crew().crew.id());
                    if (same != null) same.getUnits().add(unit);
                }
    }
}
