package drylap.planning.solver;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Days on which one region's plan has nothing for a crew go to regions where something has no place for want of such a crew:
 * shares are drawn before anybody knows who is ready when.
 */
final class Lending {
    /** A day of waiting is as bad as so much of a way. */
    private static final double KILOMETRES_A_DAY = 40;

    /** So many tasks that lack the same trade share a day. */
    private static final int TASKS_A_DAY = 4;

    private static final int DAY = 1440;

    /** To find another place for a task of the region that gives its day away is as bad as so much of a way. */
    private static final double KILOMETRES_A_TASK = 500;

    /** A crew's shift that a region does not use, or for few tasks. */
    private record Light(int region, Shift shift, Crew crew, int tasks) {}

    /** A day that a region was given, and how many of its tasks count on it. */
    private static final class Loan {
        final Light day;
        int tasks = 1;

        Loan(Light day) {
            this.day = day;
        }
    }

    private final List<RegionSearch> regions;
    private final TimeAxis axis;
    private final Map<CrewId, Crew> crews = new HashMap<>();
    private final TravelTimes travel;
    private final Map<Trade, List<Light>> light = new HashMap<>();
    private final Map<Integer, List<Loan>> loans = new LinkedHashMap<>();

    private Lending(List<RegionSearch> regions) {
        this.regions = regions;
        JobFolder any = regions.getFirst().folder();
        axis = regions.getFirst().span().axis();
        travel = any.travel();
        regions.forEach(region -> region.folder().crews().forEach(crew -> crews.put(crew.id(), crew)));
    }

    /**
     * Lends where that may help; what has a place keeps it. A published plan's days stay where they are.
     *
     * @param mostTasks so few tasks may be on a day that is lent; none of a region that lacks something itself
     * @return whether there are several regions and something in one of them has no place
     */
    static boolean among(List<RegionSearch> regions, int mostTasks) {
        boolean needed = regions.stream().anyMatch(region -> region.medium() > 0);
        boolean published =
                regions.stream().anyMatch(region -> !region.folder().published().isEmpty());
        if (!needed || regions.size() < 2 || published) return false;
        Lending lending = new Lending(regions);
        lending.findLight(mostTasks);
        for (int region = 0; region < regions.size(); region++)
            for (Lack lack : regions.get(region).lacks()) lending.meet(region, lack);
        lending.hand();
        return true;
    }

    private void findLight(int mostTasks) {
        for (int region = 0; region < regions.size(); region++)
            for (var one : regions.get(region)
                    .light(regions.get(region).medium() > 0 ? 0 : mostTasks)
                    .entrySet()) {
                Crew crew = Objects.requireNonNull(crews.get(one.getKey().crew()));
                light.computeIfAbsent(crew.trade(), trade -> new ArrayList<>())
                        .add(new Light(region, one.getKey(), crew, one.getValue()));
            }
    }

    private void meet(int region, Lack lack) {
        List<Loan> given = loans.computeIfAbsent(region, none -> new ArrayList<>());
        for (Loan loan : given) {
            if (loan.tasks == TASKS_A_DAY || !serves(loan.day, lack)) continue;
            loan.tasks++;
            return;
        }
        List<Light> days = light.getOrDefault(lack.task().kind.trade(), List.of());
        days.stream()
                .filter(day -> day.region() != region && serves(day, lack))
                .min(Comparator.comparingDouble(day -> price(day, lack)))
                .ifPresent(day -> {
                    days.remove(day);
                    given.add(new Loan(day));
                });
    }

    private boolean serves(Light day, Lack lack) {
        WorkTask task = lack.task();
        int way = travel.minutes(
                day.crew().id().value(),
                day.crew().base(),
                lack.site().id().value(),
                lack.site().place());
        int from = Math.max(axis.ceil(day.shift().startsAt()) + way, lack.from());
        boolean inTime = from + task.minutes <= Math.min(axis.floor(day.shift().limit()) - way, lack.until());
        return inTime && day.crew().trade() == task.kind.trade() && day.crew().trainedFor(task.opening.method());
    }

    private double price(Light day, Lack lack) {
        double away = day.crew().base().kilometresTo(lack.site().place());
        double days = (double) Math.max(0, axis.ceil(day.shift().startsAt()) - lack.from()) / DAY;
        return away + days * KILOMETRES_A_DAY + day.tasks() * KILOMETRES_A_TASK;
    }

    private void hand() {
        Map<Integer, Set<Shift>> taken = new HashMap<>();
        loans.values().stream()
                .flatMap(List::stream)
                .forEach(loan -> taken.computeIfAbsent(loan.day.region(), region -> new HashSet<>())
                        .add(loan.day.shift()));
        for (int region = 0; region < regions.size(); region++) {
            List<Loan> given = loans.getOrDefault(region, List.of());
            Set<Shift> lost = taken.getOrDefault(region, Set.of());
            if (given.isEmpty() && lost.isEmpty()) continue;
            JobFolder folder = regions.get(region).folder();
            regions.get(region).change(with(folder, given, lost));
        }
    }

    private JobFolder with(JobFolder folder, List<Loan> given, Set<Shift> lost) {
        List<Shift> shifts = new ArrayList<>(folder.shifts());
        shifts.removeAll(lost);
        List<Crew> own = new ArrayList<>(folder.crews());
        for (Loan loan : given) {
            shifts.add(loan.day.shift());
            if (!own.contains(loan.day.crew())) own.add(loan.day.crew());
        }
        return folder.withCrews(own).withShifts(shifts);
    }
}
