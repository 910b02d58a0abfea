package drylap.climate;

import java.util.BitSet;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;

/** The weather of one trial, drawn anew for each: wet hours by site, and by wall the hours of driving rain and of drying. */
public final class DrawnSky {
    private final Skies skies;
    /** By site. */
    private final BitSet[] wet;
    /** By facade: hours in which rain reached the wall, and those that rain or drying shuts for an install. */
    private final BitSet[] wetted;

    private final BitSet[] shut;
    private final double[] millimetres;
    private final CellLots lots;

    public DrawnSky(Skies skies) {
        this.skies = skies;
        wet = empty(skies.sites.size());
        wetted = empty(skies.walls.size());
        shut = empty(skies.walls.size());
        millimetres = new double[skies.hours()];
        lots = new CellLots(skies.hours());
    }

    private static BitSet[] empty(int count) {
        BitSet[] sets = new BitSet[count];
        java.util.Arrays.setAll(sets, _ -> new BitSet());
        return sets;
    }

    /** Cell by cell, whether it rains and how much of a standard amount. */
    public void draw(UniformRandomProvider source) {
        for (int[] sites : skies.sitesOf) {
            lots.draw(source, skies.sites.get(sites[0]).climate.shape());
            for (int site : sites) {
                skies.sites.get(site).chain.draw(lots.rain, wet[site]);
                reachWalls(site, lots::amount);
            }
        }
    }

    /** The weather itself, hour by hour, where it is not to be drawn. */
    public void set(int site, BitSet hours, double millimetres) {
        wet[site].clear();
        wet[site].or(hours);
        double[] standard = new double[skies.hours()];
        SiteSky sky = skies.sites.get(site);
        hours.stream().forEach(hour -> standard[hour] = (millimetres - sky.leastRain) / sky.excess[hour]);
        reachWalls(site, hour -> standard[hour]);
    }

    private void reachWalls(int site, IntToDoubleFunction amount) {
        SiteSky sky = skies.sites.get(site);
        for (int hour = wet[site].nextSetBit(0); hour >= 0; hour = wet[site].nextSetBit(hour + 1))
            millimetres[hour] = sky.leastRain + amount.applyAsDouble(hour) * sky.excess[hour];
        for (int wall : skies.wallsOf[site]) shut(wall, site, sky);
    }

    private void shut(int wall, int site, SiteSky sky) {
        double[] wets = skies.wets[wall];
        wetted[wall].clear();
        shut[wall].clear();
        shut[wall].or(wet[site]);
        for (int hour = wet[site].nextSetBit(0); hour >= 0; hour = wet[site].nextSetBit(hour + 1)) {
            if (millimetres[hour] < wets[hour]) continue;
            wetted[wall].set(hour);
            shut[wall].set(hour, hour + 1 + sky.drying);
        }
    }

    public BitSet wet(int site) {
        return wet[site];
    }

    public BitSet wetted(int wall) {
        return wetted[wall];
    }

    public BitSet shut(int wall) {
        return shut[wall];
    }
}
