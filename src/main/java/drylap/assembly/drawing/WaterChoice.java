package drylap.assembly.drawing;

import drylap.assembly.Layer;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterPath.Leg;
import drylap.assembly.WaterPath.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The water path worth drawing in a cut: one that fails there, else the longest that starts there. */
record WaterChoice(WaterPath path, boolean fails) {

    static Optional<WaterChoice> in(Cut cut, List<WaterPath> paths) {
        var failing = paths.stream()
                .filter(path -> path.failsAt().isPresent() && home(path) == cut)
                .max(Comparator.comparingInt(path -> shown(path, cut).size()))
                .map(path -> new WaterChoice(path, true));
        return failing.or(() -> paths.stream()
                .filter(path -> path.start() == cut.start())
                .filter(path -> !shown(path, cut).isEmpty())
                .max(Comparator.comparingInt(
                        path -> cut == Cut.JAMB ? 0 : shown(path, cut).size()))
                .map(path -> new WaterChoice(path, false)));
    }

    /** The cut that shows the lap which lets water past. */
    private static Cut home(WaterPath path) {
        var legs = path.legs();
        int fault = faultIndex(legs);
        if (fault < 1) return at(path.start());
        Layer from = legs.get(fault - 1).layer();
        Layer to = legs.get(fault).layer();
        return Stream.of(Cut.values())
                .filter(cut -> (cut.layers().contains(from) || from == Layer.RO)
                        && cut.layers().contains(to))
                .findFirst()
                .orElseGet(() -> Stream.of(Cut.values())
                        .filter(cut -> cut.layers().contains(to))
                        .findFirst()
                        .orElseThrow());
    }

    private static Cut at(WaterPath.Start start) {
        return Stream.of(Cut.values())
                .filter(cut -> cut.start() == start)
                .findFirst()
                .orElseThrow();
    }

    private static int faultIndex(List<Leg> legs) {
        for (int i = 0; i < legs.size(); i++) if (legs.get(i).side() == Side.BEHIND) return i;
        return -1;
    }

    boolean endsInside() {
        return fails && path.end().inside();
    }

    List<Leg> legsIn(Cut cut) {
        return shown(path, cut);
    }

    private static List<Leg> shown(WaterPath path, Cut cut) {
        int fault = faultIndex(path.legs());
        boolean strayed = fault >= 0 && home(path) != cut;
        return path.legs().subList(0, strayed ? fault : path.legs().size()).stream()
                .filter(leg -> cut.layers().contains(leg.layer()) || leg.layer() == Layer.RO && cut == Cut.HEAD)
                .toList();
    }
}
