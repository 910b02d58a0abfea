package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What belongs to what: windows to walls by their openings, products to storeys, storeys to buildings, products to types. */
final class Relations {
    private static final int FIRST = 4;
    private static final int SECOND = 5;
    private static final int DEEPEST = 20;

    private final ModelFile file;
    private final Map<Integer, Integer> openingOf = new HashMap<>();
    private final Map<Integer, Integer> wallOf = new HashMap<>();
    private final Map<Integer, Integer> holderOf = new HashMap<>();
    private final Map<Integer, Integer> typeOf = new HashMap<>();
    private final Map<Integer, Set<Integer>> propertiesOf = new HashMap<>();

    Relations(ModelFile file) {
        this.file = file;
        file.all("IFCRELFILLSELEMENT").forEach(one -> put(openingOf, one, SECOND, FIRST));
        file.all("IFCRELVOIDSELEMENT").forEach(one -> put(wallOf, one, SECOND, FIRST));
        file.all("IFCRELAGGREGATES").forEach(one -> putAll(holderOf, one, SECOND, FIRST));
        file.all("IFCRELCONTAINEDINSPATIALSTRUCTURE").forEach(one -> putAll(holderOf, one, FIRST, SECOND));
        file.all("IFCRELDEFINESBYTYPE").forEach(one -> putAll(typeOf, one, FIRST, SECOND));
        file.all("IFCRELDEFINESBYPROPERTIES").forEach(this::properties);
    }

    private static void put(Map<Integer, Integer> map, StepEntity relation, int of, int to) {
        relation.reference(of).ifPresent(one -> relation.reference(to).ifPresent(other -> map.put(one, other)));
    }

    private static void putAll(Map<Integer, Integer> map, StepEntity relation, int of, int to) {
        relation.reference(to).ifPresent(other -> relation.references(of).forEach(one -> map.put(one, other)));
    }

    private void properties(StepEntity relation) {
        file.entity(relation, SECOND)
                .filter(set -> set.type().equals("IFCPROPERTYSET"))
                .ifPresent(set -> relation.references(FIRST)
                        .forEach(one -> propertiesOf
                                .computeIfAbsent(one, _ -> new HashSet<>())
                                .add(set.id())));
    }

    /** The wall whose opening this window fills. */
    Optional<StepEntity> wall(StepEntity window) {
        return Optional.ofNullable(openingOf.get(window.id()))
                .map(wallOf::get)
                .flatMap(file::entity)
                .filter(one -> one.type().startsWith("IFCWALL"));
    }

    boolean fillsAnOpening(StepEntity window) {
        return openingOf.containsKey(window.id());
    }

    Optional<StepEntity> type(StepEntity product) {
        return Optional.ofNullable(typeOf.get(product.id())).flatMap(file::entity);
    }

    /** The nearest of this type that holds a product, over however many others. */
    Optional<StepEntity> holder(StepEntity product, String type) {
        Integer at = product.id();
        for (int i = 0; i < DEEPEST && at != null; i++) {
            Optional<StepEntity> here = file.entity(at).filter(one -> one.type().equals(type));
            if (here.isPresent()) return here;
            at = holderOf.get(at);
        }
        return Optional.empty();
    }

    /** What the properties of a wall say of whether it is an outer wall. */
    Optional<Boolean> external(StepEntity wall) {
        return propertiesOf.getOrDefault(wall.id(), Set.of()).stream()
                .flatMap(set -> file.entity(set).stream())
                .flatMap(set -> set.references(FIRST).stream())
                .flatMap(property -> file.entity(property).stream())
                .flatMap(property -> property.word(2).stream())
                .filter(word -> word.equals("T") || word.equals("F"))
                .map("T"::equals)
                .findFirst();
    }
}
