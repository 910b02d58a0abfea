package drylap.buildingmodel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Parallel planes of walls that look the same way, from the outermost, and how far along them windows lie: from the leftmost end of a wall or
 * window in the plane, seen from outside.
 */
final class Planes {
    /** Walls nearer than this stand in one plane: their lines may run along either face. */
    private static final double APART_MM = 500;

    /** @param direction what looks the same way: the building and the azimuth */
    record Lying(String direction, Vector outward, Vector wall, Vector window, Vector windowEnd) {
        /** How far out the wall lies. */
        double out() {
            return wall.dot(outward);
        }

        private Vector right() {
            return Vector.UP.cross(outward);
        }

        double left() {
            return Math.min(window.dot(right()), windowEnd.dot(right()));
        }

        private double leftmost() {
            return Math.min(wall.dot(right()), left());
        }
    }

    /** @param plane from 1 */
    record Found(int plane, int planes, double along) {}

    private final Map<Integer, Found> byWindow = new HashMap<>();

    /**
     * @param lying by the window's number
     * @param millimetres of one unit of the coordinates
     */
    Planes(Map<Integer, Lying> lying, double millimetres) {
        Map<String, List<Map.Entry<Integer, Lying>>> directions = new TreeMap<>();
        lying.entrySet()
                .forEach(one -> directions
                        .computeIfAbsent(one.getValue().direction(), _ -> new ArrayList<>())
                        .add(one));
        directions.values().forEach(all -> divide(all, APART_MM / millimetres));
    }

    @Nullable
    Found of(int window) {
        return byWindow.get(window);
    }

    private void divide(List<Map.Entry<Integer, Lying>> all, double apart) {
        all.sort(Comparator.comparingDouble(
                        (Map.Entry<Integer, Lying> one) -> -one.getValue().out())
                .thenComparing(Map.Entry.comparingByKey()));
        List<List<Map.Entry<Integer, Lying>>> planes = new ArrayList<>();
        double last = Double.POSITIVE_INFINITY;
        for (var one : all) {
            if (last - one.getValue().out() > apart) planes.add(new ArrayList<>());
            planes.getLast().add(one);
            last = one.getValue().out();
        }
        for (int i = 0; i < planes.size(); i++) place(planes.get(i), i + 1, planes.size());
    }

    private void place(List<Map.Entry<Integer, Lying>> plane, int number, int planes) {
        double leftmost = plane.stream()
                .mapToDouble(one -> one.getValue().leftmost())
                .min()
                .orElse(0);
        for (var one : plane)
            byWindow.put(one.getKey(), new Found(number, planes, one.getValue().left() - leftmost));
    }
}
