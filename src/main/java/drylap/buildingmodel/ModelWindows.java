package drylap.buildingmodel;

import drylap.buildingmodel.ModelWindow.Facing;
import drylap.buildingmodel.ModelWindow.ModelStorey;
import drylap.buildingmodel.step.StepEntity;
import drylap.buildingmodel.step.StepFault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Works out the windows of a model from its entities. */
final class ModelWindows {
    static final String[] WINDOWS = {"IFCWINDOW", "IFCWINDOWSTANDARDCASE"};

    private static final String STOREY = "IFCBUILDINGSTOREY";
    private static final int NAME = 2;
    private static final int TAG = 7;
    private static final int HEIGHT = 8;
    private static final int WIDTH = 9;
    private static final int ELEVATION = 9;
    private static final int CONSTRUCTION = 8;

    private final ModelFile file;
    private final LengthScale scale;
    private final TrueNorth north;
    private final Placements placements;
    private final Relations relations;
    private final Facings facings;
    private final Map<Integer, Planes.Lying> lying = new LinkedHashMap<>();
    private final Map<Integer, Facings.Side> sides = new LinkedHashMap<>();

    ModelWindows(ModelFile file) throws StepFault {
        this.file = file;
        scale = LengthScale.of(file);
        north = TrueNorth.of(file);
        placements = new Placements(file);
        relations = new Relations(file);
        facings = new Facings(file, placements, relations, scale);
    }

    ModelReading.Read read() {
        List<StepEntity> all = file.all(WINDOWS).stream()
                .sorted(Comparator.comparingInt(StepEntity::id))
                .toList();
        all.forEach(this::face);
        var planes = new Planes(lying, scale.millimetres());
        List<ModelWindow> windows = all.stream().map(one -> window(one, planes)).toList();
        return new ModelReading.Read(
                windows, understood(), file.all("IFCBUILDING").size() > 1);
    }

    private List<String> understood() {
        return List.of(
                ModelSaid.LENGTHS.with(
                        String.join(", ", file.schemas()),
                        scale.unit(),
                        java.math.BigDecimal.valueOf(scale.millimetres())
                                .stripTrailingZeros()
                                .toPlainString()),
                north.words(),
                ModelSaid.MARKS.with(),
                ModelSaid.SILLS.with(),
                ModelSaid.OUTSIDES.with());
    }

    private void face(StepEntity window) {
        Optional<StepEntity> wall = relations.wall(window);
        Optional<Placed> placed = placements.of(window);
        if (wall.isEmpty() || placed.isEmpty()) return;
        Facings.Side side = facings.of(wall.get(), placed.get());
        sides.put(window.id(), side);
        if (side.outward().isEmpty()) return;
        Vector outward = side.outward().get();
        Vector end = placed.get()
                .origin()
                .plus(placed.get().x().times(window.number(WIDTH).orElse(0)));
        Vector start = placements.of(wall.get()).orElse(placed.get()).origin();
        lying.put(
                window.id(),
                new Planes.Lying(
                        storey(window).building() + " " + north.azimuth(outward),
                        outward,
                        start,
                        placed.get().origin(),
                        end));
    }

    private ModelWindow window(StepEntity window, Planes planes) {
        List<String> open = new ArrayList<>();
        Optional<StepEntity> type = relations.type(window);
        Planes.Found found = planes.of(window.id());
        Double width = size(window, WIDTH, ModelSaid.NO_WIDTH, open);
        Double height = size(window, HEIGHT, ModelSaid.NO_HEIGHT, open);
        Double sill = sill(window, open);
        Facing facing = facing(window, found);
        if (facing instanceof Facing.NotTold notTold) open.add(ModelSaid.FACING.with(notTold.why()));
        return new ModelWindow(
                window.id(),
                window.text(0).orElse(""),
                window.text(TAG).orElse(""),
                window.text(NAME).orElse(""),
                type.flatMap(one -> one.text(NAME)).orElse(""),
                type.filter(one -> one.type().equals("IFCWINDOWSTYLE"))
                        .flatMap(one -> one.word(CONSTRUCTION))
                        .map(ModelWindows::material)
                        .orElse(""),
                storey(window),
                width,
                height,
                sill,
                facing,
                found == null ? null : mm(found.along()),
                open);
    }

    /** The construction of IfcWindowStyle as a frame's material; what is none of ours is left to a person. */
    private static String material(String construction) {
        return switch (construction) {
            case "ALUMINIUM" -> "aluminum";
            case "WOOD" -> "wood";
            case "ALUMINIUM_WOOD" -> "aluminum clad wood";
            default -> "";
        };
    }

    private @Nullable Double size(StepEntity window, int place, ModelSaid without, List<String> open) {
        var size = window.number(place);
        if (size.isEmpty()) open.add(without.with());
        return size.isEmpty() ? null : mm(size.getAsDouble());
    }

    private double mm(double length) {
        return length * scale.millimetres();
    }

    private Facing facing(StepEntity window, Planes.@Nullable Found found) {
        Facings.Side side = sides.get(window.id());
        String wall = relations.wall(window).map(Facings::words).orElse("");
        if (side == null) return new Facing.NotTold(wall, withoutSide(window, wall));
        if (side.outward().isEmpty() || found == null) return new Facing.NotTold(wall, side.why());
        return new Facing.Told(wall, north.azimuth(side.outward().get()), found.plane(), found.planes());
    }

    private String withoutSide(StepEntity window, String wall) {
        if (!wall.isEmpty()) return ModelSaid.NO_PLACE.with();
        return (relations.fillsAnOpening(window) ? ModelSaid.IN_NO_WALL : ModelSaid.NO_OPENING).with();
    }

    private Optional<StepEntity> floor(StepEntity window) {
        return relations
                .holder(window, STOREY)
                .or(() -> relations.wall(window).flatMap(wall -> relations.holder(wall, STOREY)));
    }

    private ModelStorey storey(StepEntity window) {
        return floor(window)
                .map(floor -> new ModelStorey(
                        floor.text(NAME).orElse(ModelSaid.STOREY.with(floor.id())),
                        relations
                                .holder(floor, "IFCBUILDING")
                                .map(one -> one.text(NAME).orElse(ModelSaid.BUILDING.with(one.id())))
                                .orElse(""),
                        floor.number(ELEVATION).isPresent()
                                ? Double.valueOf(mm(floor.number(ELEVATION).getAsDouble()))
                                : null))
                .orElse(ModelStorey.NONE);
    }

    private @Nullable Double sill(StepEntity window, List<String> open) {
        Optional<Placed> placed = placements.of(window);
        Optional<Placed> floor = floor(window).flatMap(placements::of);
        if (placed.isEmpty() || floor.isEmpty()) {
            open.add((placed.isEmpty() ? ModelSaid.SILL_OF_WINDOW : ModelSaid.SILL_OF_STOREY).with());
            return null;
        }
        return mm(placed.get().origin().z() - floor.get().origin().z());
    }
}
