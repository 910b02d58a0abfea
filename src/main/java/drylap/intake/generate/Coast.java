package drylap.intake.generate;

import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.util.ArrayList;
import java.util.List;

/**
 * Where sites lie: up to ten to a district, districts in a grid back from the shore. A district is small enough for its
 * crews to reach any of its sites within half an hour.
 */
record Coast(int sites) {
    private static final int SITES_A_DISTRICT = 10;
    private static final int DISTRICTS_A_ROW = 8;
    private static final GeoPoint SOUTH_WEST = new GeoPoint(46.9, -124.05);
    private static final double STEP_NORTH_DEG = 0.16;
    private static final double STEP_EAST_DEG = 0.22;
    private static final double REACH_NORTH_DEG = 0.05;
    private static final double REACH_EAST_DEG = 0.07;

    private static final List<String> FIRST = List.of(
            "Heron",
            "Alder",
            "Cormorant",
            "Lantern",
            "Pebble",
            "Juniper",
            "Kestrel",
            "Marsh",
            "Osprey",
            "Slate",
            "Willow",
            "Tern",
            "Kelp",
            "Bracken",
            "Plover",
            "Gannet");
    private static final List<String> SECOND =
            List.of("Court", "Row", "House", "Terrace", "Yard", "Lofts", "Hall", "Gardens", "Wharf", "Mews");

    static Coast of(int sites) {
        return new Coast(sites);
    }

    int districts() {
        return Math.ceilDiv(sites, SITES_A_DISTRICT);
    }

    int district(int site) {
        return site / SITES_A_DISTRICT;
    }

    GeoPoint centre(int district) {
        return new GeoPoint(
                Dice.rounded(SOUTH_WEST.latitude() + STEP_NORTH_DEG * (district / DISTRICTS_A_ROW), 4),
                Dice.rounded(SOUTH_WEST.longitude() + STEP_EAST_DEG * (district % DISTRICTS_A_ROW), 4));
    }

    GeoPoint near(int district, Dice dice) {
        GeoPoint centre = centre(district);
        return new GeoPoint(
                Dice.rounded(centre.latitude() + dice.between(-REACH_NORTH_DEG, REACH_NORTH_DEG), 4),
                Dice.rounded(centre.longitude() + dice.between(-REACH_EAST_DEG, REACH_EAST_DEG), 4));
    }

    List<Site> sites(Dice dice) {
        List<Site> all = new ArrayList<>();
        int digits = Integer.toString(sites).length();
        for (int i = 0; i < sites; i++) {
            SiteId id = new SiteId(("S%0" + digits + "d").formatted(i + 1));
            Terrain terrain = dice.pick(List.of(Terrain.II, Terrain.III, Terrain.III, Terrain.IV));
            all.add(new Site(id, name(i), near(district(i), dice), Season.ZONE, terrain));
        }
        return all;
    }

    /** Every pair of words once before a number is needed. */
    private static String name(int site) {
        int pairs = FIRST.size() * SECOND.size();
        int round = site / pairs;
        String name = FIRST.get(site % FIRST.size()) + " " + SECOND.get(site / FIRST.size() % SECOND.size());
        return round == 0 ? name : name + " " + (round + 1);
    }
}
