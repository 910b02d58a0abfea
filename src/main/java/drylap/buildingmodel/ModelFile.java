package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import drylap.buildingmodel.step.StepFault;
import drylap.buildingmodel.step.StepLimits;
import drylap.buildingmodel.step.StepReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The entities of a model that say something of its windows. The file is gone through three times: axes, points and directions make most of a
 * model, and only those that placements ask for are kept.
 */
final class ModelFile {
    static final String WALL_PROPERTIES = "Pset_WallCommon";
    static final String EXTERNAL = "IsExternal";

    private static final Set<String> KEPT = Set.of(
            "IFCPROJECT",
            "IFCBUILDING",
            "IFCBUILDINGSTOREY",
            "IFCWINDOW",
            "IFCWINDOWSTANDARDCASE",
            "IFCWINDOWSTYLE",
            "IFCWINDOWTYPE",
            "IFCWALL",
            "IFCWALLSTANDARDCASE",
            "IFCWALLELEMENTEDCASE",
            "IFCRELFILLSELEMENT",
            "IFCRELVOIDSELEMENT",
            "IFCRELCONTAINEDINSPATIALSTRUCTURE",
            "IFCRELAGGREGATES",
            "IFCRELDEFINESBYTYPE",
            "IFCRELDEFINESBYPROPERTIES",
            "IFCPROPERTYSET",
            "IFCPROPERTYSINGLEVALUE",
            "IFCLOCALPLACEMENT",
            "IFCGEOMETRICREPRESENTATIONCONTEXT",
            "IFCUNITASSIGNMENT",
            "IFCSIUNIT",
            "IFCCONVERSIONBASEDUNIT",
            "IFCCONVERSIONBASEDUNITWITHOFFSET",
            "IFCMEASUREWITHUNIT");
    private static final int PROPERTY_NAME = 0;
    private static final int SET_NAME = 2;
    private static final int RELATIVE_PLACEMENT = 1;
    private static final int TRUE_NORTH = 5;

    private final StepLimits limits;
    private final Map<Integer, StepEntity> byId = new TreeMap<>();
    private final Map<String, List<StepEntity>> byType = new HashMap<>();
    private List<String> schemas = List.of();
    private @Nullable StepFault refused;

    private ModelFile(StepLimits limits) {
        this.limits = limits;
    }

    static ModelFile of(byte[] bytes, StepLimits limits) throws StepFault {
        var file = new ModelFile(limits);
        file.schemas = file.pass(bytes, KEPT::contains, ModelFile::saysSomething);
        Set<Integer> axes = file.asked("IFCLOCALPLACEMENT", RELATIVE_PLACEMENT);
        file.pass(bytes, "IFCAXIS2PLACEMENT3D"::equals, one -> axes.contains(one.id()));
        Set<Integer> points = file.asked("IFCAXIS2PLACEMENT3D", 0, 1, 2);
        points.addAll(file.asked("IFCGEOMETRICREPRESENTATIONCONTEXT", TRUE_NORTH));
        file.pass(bytes, Set.of("IFCCARTESIANPOINT", "IFCDIRECTION")::contains, one -> points.contains(one.id()));
        return file;
    }

    private List<String> pass(byte[] bytes, Predicate<String> types, Predicate<StepEntity> which) throws StepFault {
        try {
            List<String> said = StepReader.read(new ByteArrayInputStream(bytes), limits, types, one -> {
                if (which.test(one)) keep(one);
            });
            if (refused != null) throw refused;
            return said;
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static boolean saysSomething(StepEntity one) {
        return switch (one.type()) {
            case "IFCPROPERTYSINGLEVALUE" ->
                one.text(PROPERTY_NAME).filter(EXTERNAL::equals).isPresent();
            case "IFCPROPERTYSET" ->
                one.text(SET_NAME).filter(WALL_PROPERTIES::equals).isPresent();
            default -> true;
        };
    }

    private void keep(StepEntity one) {
        if (byId.size() >= limits.kept()) {
            refuse(one, ModelSaid.TOO_MANY_READ.with(), ModelSaid.AT_MOST.with("%,d".formatted(limits.kept())));
            return;
        }
        if (byId.putIfAbsent(one.id(), one) != null) refuse(one, ModelSaid.TWICE.with(), ModelSaid.ONCE.with());
        else byType.computeIfAbsent(one.type(), _ -> new ArrayList<>()).add(one);
    }

    private void refuse(StepEntity one, String wrong, String accepted) {
        if (refused == null) refused = new StepFault(0, one.id(), wrong, accepted);
    }

    private Set<Integer> asked(String type, int... places) {
        Set<Integer> asked = new HashSet<>();
        for (StepEntity one : all(type))
            for (int place : places) one.reference(place).ifPresent(asked::add);
        return asked;
    }

    List<String> schemas() {
        return schemas;
    }

    /** All of these types, in the order of the file. */
    List<StepEntity> all(String... types) {
        List<StepEntity> all = new ArrayList<>();
        for (String type : types) all.addAll(byType.getOrDefault(type, List.of()));
        return all;
    }

    Optional<StepEntity> entity(int id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The entity that a parameter names, where it is kept. */
    Optional<StepEntity> entity(StepEntity of, int place) {
        var reference = of.reference(place);
        return reference.isPresent() ? entity(reference.getAsInt()) : Optional.empty();
    }
}
