package drylap.raincall;

import drylap.raincall.Rain.Outcome;
import drylap.raincall.Rain.Visit;
import java.util.ArrayList;
import java.util.LinkedList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The best order of all. Ways that have been to the same openings and stand at the same place are compared by time, water so
 * far and covers so far: since every opening takes no less water the later it is shut, and nothing becomes possible by waiting,
 * a way that is no better in any of the three can be dropped, and what follows it is no loss. Nothing else is dropped but ways
 * whose water cannot come below that of an order already known.
 */
final class ExactOrder {
    private record Way(
            int last,
            int time,
            long water,
            int covered,
            @Nullable Way before,
            @Nullable Visit visit) {
        boolean noWorseThan(Way other) {
            return time <= other.time && water <= other.water && covered <= other.covered;
        }
    }

    private static final Way START = new Way(-1, 0, 0, 0, null, null);

    private final Rain rain;
    private final int[] place;
    private final int[] leastWalk;
    private final List<List<Way>> ways = new ArrayList<>();
    private List<Visit> best;
    private Outcome least;

    private ExactOrder(Rain rain, List<Visit> known) {
        this.rain = rain;
        best = known;
        least = rain.outcome(known);
        place = new int[rain.size()];
        leastWalk = new int[rain.size()];
        for (int i = 0; i < rain.size(); i++) {
            place[i] = placeOf(i);
            leastWalk[i] = rain.walks().least(i);
        }
    }

    /** @param known any order; a good one saves work */
    static List<Visit> of(Rain rain, List<Visit> known) {
        return new ExactOrder(rain, known).search();
    }

    private List<Visit> search() {
        int sets = 1 << rain.size();
        for (int set = 0; set < sets; set++) ways.add(new LinkedList<>());
        ways.getFirst().add(START);
        for (int set = 0; set < sets; set++) {
            for (var way : ways.get(set)) goOn(set, way);
            ways.set(set, List.of());
        }
        return best;
    }

    private void goOn(int set, Way way) {
        if (way.water() + stillToCome(set, way.time()) > least.water()) return;
        end(set, way);
        for (int next = 0; next < rain.size(); next++)
            if ((set >> next & 1) == 0) for (var act : Act.values()) visit(set, way, next, act);
    }

    private void visit(int set, Way way, int next, Act act) {
        var one = rain.at(next);
        int until = rain.ends(way.last(), way.time(), next, act);
        if (!one.works(act, until)) return;
        long water = way.water() + one.water(act, until);
        int covered = way.covered() + (act == Act.COVER ? 1 : 0);
        int after = set | 1 << next;
        if (water + stillToCome(after, until) > least.water()) return;
        add(ways.get(after), new Way(place[next], until, water, covered, way, new Visit(next, act)));
    }

    private static void add(List<Way> known, Way way) {
        for (var other : known) if (other.last() == way.last() && other.noWorseThan(way)) return;
        known.removeIf(other -> other.last() == way.last() && way.noWorseThan(other));
        known.add(way);
    }

    private void end(int set, Way way) {
        long water = way.water();
        for (int i = 0; i < rain.size(); i++)
            if ((set >> i & 1) == 0) water += rain.at(i).intake().all();
        var outcome = new Outcome(water, rain.size() - Integer.bitCount(set), way.covered(), way.time());
        if (outcome.compareTo(least) >= 0) return;
        least = outcome;
        best = visits(way);
    }

    /** What the openings outside the set take at the least: as if each were the next. */
    private long stillToCome(int set, int time) {
        long water = 0;
        for (int i = 0; i < rain.size(); i++) if ((set >> i & 1) == 0) water += least(i, time + leastWalk[i]);
        return water;
    }

    private long least(int opening, int from) {
        var one = rain.at(opening);
        long water = one.intake().all();
        int closed = from + one.closeMin();
        if (one.works(Act.CLOSE, closed)) water = one.water(Act.CLOSE, closed);
        int covered = from + one.coverMin();
        return one.works(Act.COVER, covered) ? Math.min(water, one.water(Act.COVER, covered)) : water;
    }

    /** The first opening from which every way on is as long; where the crew stands matters in no other way. */
    private int placeOf(int opening) {
        int same = 0;
        while (!rain.walks().alike(same, opening)) same++;
        return same;
    }

    private static List<Visit> visits(Way last) {
        LinkedList<Visit> visits = new LinkedList<>();
        for (@Nullable Way way = last; way != null; way = way.before())
            if (way.visit() != null) visits.addFirst(way.visit());
        return List.copyOf(visits);
    }
}
