package drylap.planning.solver;

import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import drylap.planning.solver.CrewShares.CrewDate;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Cuts a large job into regions that are planned each by itself: neighbouring sites, and for each trade crews in the measure of
 * its work. What people have published stays together. A job that cannot be cut so that every region has the crews that its
 * work needs, stays whole.
 */
final class Regions {
    /** So many openings are searched well within a minute; a region has more rather than fewer. */
    private static final int OPENINGS = 250;

    private static final int WHOLE_UP_TO = 450;

    /** Sites that the published days of crews tie together. */
    record Cluster(List<Site> sites, Set<CrewDate> days, int openings) {
        double latitude() {
            return sites.stream()
                    .mapToDouble(site -> site.place().latitude())
                    .average()
                    .orElse(0);
        }

        double longitude() {
            return sites.stream()
                    .mapToDouble(site -> site.place().longitude())
                    .average()
                    .orElse(0);
        }
    }

    private final JobFolder folder;
    private final Map<SiteId, List<Opening>> openings;

    private Regions(JobFolder folder) {
        this.folder = folder;
        openings = folder.openings().stream()
                .collect(Collectors.groupingBy(opening -> opening.facade().site()));
    }

    /** Whether a job is so large that it is cut if it can be. */
    static boolean mayCut(JobFolder folder) {
        return folder.openings().size() > WHOLE_UP_TO;
    }

    /** The job itself where it is small or cannot be cut. */
    static List<JobFolder> of(JobFolder folder) {
        if (!mayCut(folder)) return List.of(folder);
        int all = folder.openings().size();
        Regions regions = new Regions(folder);
        List<Cluster> clusters = regions.clusters();
        for (int parts = Math.min(clusters.size(), all / OPENINGS); parts > 1; parts -= Math.max(1, parts / 8)) {
            Optional<List<JobFolder>> cut = regions.cut(clusters, parts);
            if (cut.isPresent()) return cut.get();
        }
        return List.of(folder);
    }

    private Optional<List<JobFolder>> cut(List<Cluster> clusters, int parts) {
        List<List<Cluster>> regions = new ArrayList<>();
        halve(clusters, parts, regions);
        List<List<Site>> sites = regions.stream()
                .map(region -> region.stream()
                        .flatMap(cluster -> cluster.sites().stream())
                        .toList())
                .toList();
        List<Set<CrewDate>> days = regions.stream()
                .map(region -> region.stream()
                        .flatMap(cluster -> cluster.days().stream())
                        .collect(Collectors.toSet()))
                .toList();
        return CrewShares.of(folder, sites, days).map(shifts -> folders(sites, shifts));
    }

    /** Halves along the longer side of the map, by openings, until there are so many parts. */
    private static void halve(List<Cluster> clusters, int parts, List<List<Cluster>> into) {
        if (parts < 2 || clusters.size() < 2) {
            if (!clusters.isEmpty()) into.add(clusters);
            return;
        }
        List<Cluster> sorted =
                clusters.stream().sorted(alongTheLongerSide(clusters)).toList();
        int left = parts / 2;
        long wanted = Math.round((double) openings(clusters) * left / parts);
        int cut = 0;
        for (long sum = 0; cut < sorted.size() - 1 && sum < wanted; cut++)
            sum += sorted.get(cut).openings();
        cut = Math.max(1, cut);
        halve(sorted.subList(0, cut), left, into);
        halve(sorted.subList(cut, sorted.size()), parts - left, into);
    }

    private static long openings(List<Cluster> clusters) {
        return clusters.stream().mapToLong(Cluster::openings).sum();
    }

    private static Comparator<Cluster> alongTheLongerSide(List<Cluster> clusters) {
        var north = clusters.stream().mapToDouble(Cluster::latitude).summaryStatistics();
        var east = clusters.stream().mapToDouble(Cluster::longitude).summaryStatistics();
        double width = (east.getMax() - east.getMin()) * Math.cos(Math.toRadians(north.getAverage()));
        Comparator<Cluster> order = width > north.getMax() - north.getMin()
                ? Comparator.comparingDouble(Cluster::longitude)
                : Comparator.comparingDouble(Cluster::latitude);
        return order.thenComparing(cluster -> cluster.sites().getFirst().id().value());
    }

    private List<Cluster> clusters() {
        Map<SiteId, Set<CrewDate>> visited = new HashMap<>();
        Map<OpeningId, Opening> byId =
                folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
        for (PublishedVisit one : folder.published()) {
            Opening opening = byId.get(one.visit().opening());
            if (opening == null || !opening.tasks().contains(one.visit().task())) continue;
            visited.computeIfAbsent(opening.facade().site(), site -> new HashSet<>())
                    .add(new CrewDate(one.visit().crew(), one.visit().date()));
        }
        List<Cluster> clusters = new ArrayList<>();
        for (Site site : folder.sites()) {
            int count = openings.getOrDefault(site.id(), List.of()).size();
            join(clusters, new Cluster(List.of(site), visited.getOrDefault(site.id(), Set.of()), count));
        }
        return clusters;
    }

    private static void join(List<Cluster> clusters, Cluster next) {
        List<Site> sites = new ArrayList<>();
        Set<CrewDate> days = new HashSet<>(next.days());
        int count = next.openings();
        for (Cluster one : List.copyOf(clusters)) {
            if (Collections.disjoint(one.days(), next.days())) continue;
            clusters.remove(one);
            sites.addAll(one.sites());
            days.addAll(one.days());
            count += one.openings();
        }
        sites.addAll(next.sites());
        clusters.add(new Cluster(sites, days, count));
    }

    private List<JobFolder> folders(List<List<Site>> sites, List<List<Shift>> shifts) {
        List<JobFolder> folders = new ArrayList<>();
        for (int region = 0; region < sites.size(); region++)
            folders.add(
                    folder(sites.get(region).stream().map(Site::id).collect(Collectors.toSet()), shifts.get(region)));
        return folders;
    }

    private JobFolder folder(Set<SiteId> sites, List<Shift> shifts) {
        Set<CrewId> crews = shifts.stream().map(Shift::crew).collect(Collectors.toSet());
        return new JobFolder(
                folder.sites().stream()
                        .filter(site -> sites.contains(site.id()))
                        .toList(),
                folder.facades().stream()
                        .filter(facade -> sites.contains(facade.id().site()))
                        .toList(),
                folder.openings().stream()
                        .filter(opening -> sites.contains(opening.facade().site()))
                        .toList(),
                folder.crews().stream()
                        .filter(crew -> crews.contains(crew.id()))
                        .toList(),
                shifts,
                folder.travel(),
                folder.forecasts().stream()
                        .filter(forecast -> sites.contains(forecast.site()))
                        .toList(),
                folder.labour(),
                folder.rules(),
                folder.published().stream()
                        .filter(one -> sites.contains(one.visit().facade().site())
                                && crews.contains(one.visit().crew()))
                        .toList());
    }
}
