package drylap.climate;

import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.SiteId;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The sites' weather before it is drawn, and which of them share what is drawn. */
public final class Skies {
    final List<SiteSky> sites = new ArrayList<>();
    final List<Facade> walls;
    final int[][] wallsOf;
    /** By wall and hour, the millimetres from which it is wetted. */
    final double[][] wets;
    /** By cell, in which it rains by the same lots. */
    final int[][] sitesOf;

    private final Map<SiteId, Integer> siteIndex = new HashMap<>();
    private final Map<FacadeId, Integer> wallIndex = new HashMap<>();

    /** @param start of what was before it and before any forecast nothing is known, and nothing is made up */
    public Skies(
            List<Site> of,
            List<Facade> facades,
            List<Forecast> forecasts,
            RuleBook book,
            List<MonthlyNormals> normals,
            MinuteAxis axis,
            int start) {
        Map<SiteId, Forecast> told = forecasts.stream().collect(Collectors.toMap(Forecast::site, Function.identity()));
        for (Site site : of) {
            Forecast forecast = told.getOrDefault(site.id(), Forecast.none(site.id()));
            var rules = book.at(site.id());
            siteIndex.put(site.id(), sites.size());
            Climate climate = Climate.of(site.id(), normals, forecast, rules);
            sites.add(new SiteSky(site, forecast, rules, climate, axis, start));
        }
        walls = List.copyOf(facades);
        for (Facade wall : walls) wallIndex.put(wall.id(), wallIndex.size());
        wets = new double[walls.size()][];
        for (int wall = 0; wall < wets.length; wall++)
            wets[wall] = sites.get(site(walls.get(wall).id().site()))
                    .wets(walls.get(wall).azimuthDeg());
        wallsOf = wallsOfSites();
        sitesOf = cells();
    }

    public SiteSky at(int site) {
        return sites.get(site);
    }

    public List<SiteSky> sites() {
        return Collections.unmodifiableList(sites);
    }

    public List<Facade> walls() {
        return walls;
    }

    public int[] wallsOf(int site) {
        return wallsOf[site].clone();
    }

    private int[][] wallsOfSites() {
        List<List<Integer>> of = new ArrayList<>();
        sites.forEach(_ -> of.add(new ArrayList<>()));
        for (Facade wall : walls) of.get(site(wall.id().site())).add(wall(wall.id()));
        return arrays(of);
    }

    /** A site joins the first before it that is near enough; then both rain by the same lots, each with its own chances. */
    private int[][] cells() {
        List<List<Integer>> cells = new ArrayList<>();
        for (int site = 0; site < sites.size(); site++) cellOf(site, cells).add(site);
        return arrays(cells);
    }

    private List<Integer> cellOf(int site, List<List<Integer>> cells) {
        List<Integer> nearest = null;
        int first = site;
        for (List<Integer> cell : cells)
            for (int other : cell) {
                if (other >= first || !near(site, other)) continue;
                nearest = cell;
                first = other;
            }
        if (nearest == null) {
            nearest = new ArrayList<>();
            cells.add(nearest);
        }
        return nearest;
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private boolean near(int site, int other) {
        SiteSky sky = sites.get(site);
        double kilometres = sky.site.place().kilometresTo(sites.get(other).site.place());
        return kilometres <= sky.rules.value(Rule.WEATHER_CELL_KM);
    }

    public int site(SiteId id) {
        return java.util.Objects.requireNonNull(siteIndex.get(id));
    }

    public int wall(FacadeId id) {
        return java.util.Objects.requireNonNull(wallIndex.get(id));
    }

    public int hours() {
        return sites.isEmpty() ? 0 : sites.getFirst().hours;
    }
}
