package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which side of a wall is outside: the one on which no other wall or window of its storey stands, when others stand on the other side. At an inner
 * corner, at a wall by itself, or where a wall is said to be an inner one, that cannot be told, and a person is asked.
 */
final class Facings {
    /** How far off its plane something must lie to stand on one of its sides: more than a wall is thick. */
    private static final double OFF_THE_PLANE_MM = 500;
    /** Of a direction that counts as level or upright: 1.1 degrees. */
    private static final double NEARLY = 0.02;

    private final Placements placements;
    private final Relations relations;
    private final LengthScale scale;
    private final Map<Integer, Set<Vector>> byStorey = new HashMap<>();
    private final Set<Vector> everywhere = new HashSet<>();

    /** @param outward of length one and level; none where it cannot be told, and then why */
    record Side(Optional<Vector> outward, String why) {}

    Facings(ModelFile file, Placements placements, Relations relations, LengthScale scale) {
        this.placements = placements;
        this.relations = relations;
        this.scale = scale;
        file.all("IFCWALL", "IFCWALLSTANDARDCASE", "IFCWALLELEMENTEDCASE").stream()
                .filter(wall -> relations.external(wall).orElse(true))
                .forEach(this::note);
        file.all(ModelWindows.WINDOWS).stream()
                .filter(window ->
                        relations.wall(window).flatMap(relations::external).orElse(true))
                .forEach(this::note);
    }

    private void note(StepEntity product) {
        placements.of(product).ifPresent(placed -> {
            everywhere.add(placed.origin());
            storey(product)
                    .ifPresent(storey -> byStorey.computeIfAbsent(storey, _ -> new HashSet<>())
                            .add(placed.origin()));
        });
    }

    private Optional<Integer> storey(StepEntity product) {
        return relations
                .holder(product, "IFCBUILDINGSTOREY")
                .or(() -> relations.wall(product).flatMap(wall -> relations.holder(wall, "IFCBUILDINGSTOREY")))
                .map(StepEntity::id);
    }

    Side of(StepEntity wall, Placed window) {
        if (!relations.external(wall).orElse(true)) return notTold(ModelSaid.INNER);
        Optional<Placed> placed = placements.of(wall);
        if (placed.isEmpty()) return notTold(ModelSaid.WALL_NOWHERE);
        Vector normal = placed.get().y();
        if (Math.abs(normal.z()) > NEARLY || Math.abs(placed.get().x().z()) > NEARLY)
            return notTold(ModelSaid.NOT_UPRIGHT);
        if (Math.abs(window.x().dot(normal)) > NEARLY) return notTold(ModelSaid.TURNED);
        return side(wall, placed.get().origin(), normal);
    }

    private Side side(StepEntity wall, Vector origin, Vector normal) {
        double limit = OFF_THE_PLANE_MM / scale.millimetres();
        List<Double> off = others(wall)
                .map(other -> other.minus(origin).dot(normal))
                .filter(distance -> Math.abs(distance) > limit)
                .toList();
        boolean ahead = off.stream().anyMatch(distance -> distance > 0);
        boolean behind = off.stream().anyMatch(distance -> distance < 0);
        if (ahead && behind) return notTold(ModelSaid.BOTH_SIDES);
        if (!ahead && !behind) return notTold(ModelSaid.NO_OTHER);
        return new Side(Optional.of(behind ? normal : normal.times(-1)), "");
    }

    private Stream<Vector> others(StepEntity wall) {
        return storey(wall).map(byStorey::get).orElse(everywhere).stream();
    }

    private static Side notTold(ModelSaid why) {
        return new Side(Optional.empty(), why.with());
    }

    /** A wall's name and number. */
    static String words(StepEntity wall) {
        return wall.text(2).map(name -> "%s (#%d)".formatted(name, wall.id())).orElse(ModelSaid.WALL.with(wall.id()));
    }
}
