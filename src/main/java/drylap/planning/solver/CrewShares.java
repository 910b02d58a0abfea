package drylap.planning.solver;

import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Shares the crews out among regions: near ones first, each trade in the measure of its work, every method somebody's. Where a
 * trade has fewer crews than there are regions, crews are shared by days.
 */
final class CrewShares {
    /** A crew that others have is taken if it is nearer by so much. */
    private static final double KILOMETRES_FOR_A_SHARE = 15;

    /** A crew on one day. */
    record CrewDate(CrewId crew, LocalDate date) {}

    private record Skill(Task task, Method method) {}

    private final JobFolder folder;
    private final int regions;
    private final List<GeoPoint> middles = new ArrayList<>();
    private final List<Map<Trade, Double>> work = new ArrayList<>();
    private final List<Set<Skill>> skills = new ArrayList<>();
    private final List<Set<Skill>> covered = new ArrayList<>();
    private final Map<CrewId, Set<Integer>> regionsOf = new HashMap<>();
    private final Map<CrewDate, Integer> bound = new HashMap<>();
    private final Map<CrewId, Double> minutes = new HashMap<>();

    private CrewShares(JobFolder folder, List<List<Site>> sites, List<Set<CrewDate>> published) {
        this.folder = folder;
        regions = sites.size();
        Map<SiteId, Integer> regionOf = new HashMap<>();
        for (int region = 0; region < regions; region++) {
            for (Site site : sites.get(region)) regionOf.put(site.id(), region);
            middles.add(middle(sites.get(region)));
            work.add(new EnumMap<>(Trade.class));
            skills.add(new HashSet<>());
            covered.add(new HashSet<>());
        }
        for (int region = 0; region < regions; region++)
            for (CrewDate day : published.get(region)) {
                bound.put(day, region);
                regionsOf.computeIfAbsent(day.crew(), crew -> new TreeSet<>()).add(region);
            }
        for (Opening opening : folder.openings())
            count(
                    opening,
                    java.util.Objects.requireNonNull(
                            regionOf.get(opening.facade().site())));
        for (Shift shift : folder.shifts())
            minutes.merge(
                    shift.crew(),
                    (double) Duration.between(shift.startsAt(), shift.endsAt()).toMinutes(),
                    Double::sum);
    }

    /** The shifts of each region; nothing where some region would lack a crew for its work that the whole job has. */
    static Optional<List<List<Shift>>> of(JobFolder folder, List<List<Site>> sites, List<Set<CrewDate>> published) {
        CrewShares shares = new CrewShares(folder, sites, published);
        for (Trade trade : Trade.values()) shares.share(trade);
        return shares.complete() ? Optional.of(shares.shifts()) : Optional.empty();
    }

    /** A crew of several regions is in turn with each, but where a published plan has it. */
    private List<List<Shift>> shifts() {
        List<List<Shift>> all = new ArrayList<>();
        for (int region = 0; region < regions; region++) all.add(new ArrayList<>());
        Map<CrewId, Integer> turns = new HashMap<>();
        for (Shift shift : folder.shifts().stream()
                .sorted(Comparator.comparing(Shift::date))
                .toList()) {
            Integer published = bound.get(new CrewDate(shift.crew(), shift.date()));
            List<Integer> turn = List.copyOf(regionsOf.getOrDefault(shift.crew(), Set.of(0)));
            int region =
                    published != null ? published : turn.get(turns.merge(shift.crew(), 1, Integer::sum) % turn.size());
            all.get(region).add(shift);
        }
        return all;
    }

    private static GeoPoint middle(List<Site> sites) {
        return new GeoPoint(
                sites.stream()
                        .mapToDouble(site -> site.place().latitude())
                        .average()
                        .orElse(0),
                sites.stream()
                        .mapToDouble(site -> site.place().longitude())
                        .average()
                        .orElse(0));
    }

    private void count(Opening opening, int region) {
        for (Task task : opening.tasks()) {
            work.get(region).merge(task.trade(), (double) folder.labour().minutes(opening, task), Double::sum);
            skills.get(region).add(new Skill(task, opening.method()));
        }
    }

    private double work(int region, Trade trade) {
        return work.get(region).getOrDefault(trade, 0.0);
    }

    private double capacity(Crew crew) {
        return minutes.getOrDefault(crew.id(), 0.0);
    }

    private void share(Trade trade) {
        List<Crew> crews =
                folder.crews().stream().filter(crew -> crew.trade() == trade).toList();
        double allWork = IntStream.range(0, regions)
                .mapToDouble(region -> work(region, trade))
                .sum();
        double allMinutes = crews.stream().mapToDouble(this::capacity).sum();
        double[] open = new double[regions];
        for (int region = 0; region < regions; region++)
            open[region] = allWork == 0 ? 0 : allMinutes * work(region, trade) / allWork;
        List<Crew> free = new ArrayList<>();
        for (Crew crew : crews) {
            Set<Integer> taken = regionsOf.getOrDefault(crew.id(), Set.of());
            if (taken.isEmpty()) free.add(crew);
            for (int region : Set.copyOf(taken)) give(crew, region, open);
        }
        coverSkills(free, crews, open);
        nearestFirst(free, open);
        for (Crew crew : free) give(crew, neediest(open), open);
    }

    private void give(Crew crew, int region, double[] open) {
        Set<Integer> of = regionsOf.computeIfAbsent(crew.id(), id -> new TreeSet<>());
        of.add(region);
        open[region] -= capacity(crew) / of.size();
        for (Skill skill : skills.get(region))
            if (able(crew, skill)) covered.get(region).add(skill);
    }

    private int neediest(double[] open) {
        return IntStream.range(0, regions)
                .boxed()
                .max(Comparator.comparingDouble(region -> open[region]))
                .orElse(0);
    }

    /** First, for whatever a region's work needs and none of its crews can do, the nearest crew that can. */
    private void coverSkills(List<Crew> free, List<Crew> all, double[] open) {
        for (int region = 0; region < regions; region++)
            for (Skill skill : skills.get(region).stream()
                    .sorted(Comparator.comparing(Skill::toString))
                    .toList()) if (!covered.get(region).contains(skill)) cover(region, skill, free, all, open);
    }

    private void cover(int region, Skill skill, List<Crew> free, List<Crew> all, double[] open) {
        all.stream()
                .filter(crew -> able(crew, skill))
                .min(Comparator.comparingDouble(crew -> away(crew, region) + KILOMETRES_FOR_A_SHARE * timesTaken(crew)))
                .ifPresent(crew -> {
                    free.remove(crew);
                    give(crew, region, open);
                });
    }

    private int timesTaken(Crew crew) {
        return regionsOf.getOrDefault(crew.id(), Set.of()).size();
    }

    private static boolean able(Crew crew, Skill skill) {
        return crew.trade() == skill.task().trade() && crew.trainedFor(skill.method());
    }

    private double away(Crew crew, int region) {
        return crew.base().kilometresTo(middles.get(region));
    }

    private void nearestFirst(List<Crew> free, double[] open) {
        record Pair(Crew crew, int region, double away) {}
        List<Pair> pairs = free.stream()
                .flatMap(crew ->
                        IntStream.range(0, regions).mapToObj(region -> new Pair(crew, region, away(crew, region))))
                .sorted(Comparator.comparingDouble(Pair::away)
                        .thenComparing(pair -> pair.crew().id()))
                .toList();
        for (Pair pair : pairs) {
            if (!free.contains(pair.crew()) || open[pair.region()] < capacity(pair.crew()) / 2) continue;
            free.remove(pair.crew());
            give(pair.crew(), pair.region(), open);
        }
    }

    /** A trade that nobody in the whole job is of is missed everywhere, whole or cut. */
    private boolean complete() {
        Set<Skill> known = skills.stream()
                .flatMap(Set::stream)
                .filter(skill -> folder.crews().stream().anyMatch(crew -> able(crew, skill)))
                .collect(Collectors.toSet());
        return IntStream.range(0, regions)
                .allMatch(region -> skills.get(region).stream()
                        .allMatch(skill ->
                                !known.contains(skill) || covered.get(region).contains(skill)));
    }
}
