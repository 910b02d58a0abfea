package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import drylap.buildingmodel.step.StepFault;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many millimetres the model's unit of length has. It is the one length unit that the project assigns: metres with a prefix, or a unit that is converted from
 * one, such as the foot.
 *
 * @param unit in words
 */
record LengthScale(double millimetres, String unit) {
    private static final double MM_IN_A_METRE = 1000;
    private static final int LONGEST_CHAIN = 8;
    private static final int UNITS_IN_CONTEXT = 8;
    private static final int UNIT_TYPE = 1;
    private static final int NAME = 2;
    private static final int SI_NAME = 3;
    private static final int FACTOR = 3;

    /** The prefixes of the SI as ISO 10303-41 spells them; those beyond are of no use for buildings. */
    private static final Map<String, Double> PREFIXES = Map.of(
            "MEGA", 1e6, "KILO", 1e3, "HECTO", 1e2, "DECA", 1e1, "DECI", 1e-1, "CENTI", 1e-2, "MILLI", 1e-3, "MICRO",
            1e-6, "NANO", 1e-9);

    /** @throws StepFault where the model does not say it: sizes could then mean anything */
    static LengthScale of(ModelFile file) throws StepFault {
        List<StepEntity> projects = file.all("IFCPROJECT");
        if (projects.size() != 1)
            throw new StepFault(0, 0, ModelSaid.PROJECTS.with(projects.size()), ModelSaid.ONE_PROJECT.with());
        List<StepEntity> lengths = file.entity(projects.getFirst(), UNITS_IN_CONTEXT).stream()
                .flatMap(assigned -> assigned.references(0).stream())
                .flatMap(unit -> file.entity(unit).stream())
                .filter(unit ->
                        unit.word(UNIT_TYPE).filter("LENGTHUNIT"::equals).isPresent())
                .toList();
        if (lengths.size() != 1)
            throw new StepFault(
                    0,
                    projects.getFirst().id(),
                    (lengths.isEmpty() ? ModelSaid.NO_UNIT : ModelSaid.MANY_UNITS).with(),
                    ModelSaid.ONE_UNIT.with());
        return of(file, lengths.getFirst());
    }

    private static LengthScale of(ModelFile file, StepEntity unit) throws StepFault {
        OptionalDouble scale = millimetres(file, unit, LONGEST_CHAIN);
        if (scale.isEmpty() || !(scale.getAsDouble() > 0))
            throw new StepFault(0, unit.id(), ModelSaid.ODD_UNIT.with(), ModelSaid.METRES.with());
        double millimetres = scale.getAsDouble();
        String name = unit.text(NAME)
                .orElse((unit.word(NAME).orElse("") + " " + unit.word(SI_NAME).orElse("")).strip());
        return new LengthScale(millimetres, name.toLowerCase(java.util.Locale.ROOT));
    }

    private static OptionalDouble millimetres(ModelFile file, StepEntity unit, int chain) {
        if (chain == 0) return OptionalDouble.empty();
        return switch (unit.type()) {
            case "IFCSIUNIT" -> si(unit);
            case "IFCCONVERSIONBASEDUNIT", "IFCCONVERSIONBASEDUNITWITHOFFSET" -> converted(file, unit, chain);
            default -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble si(StepEntity unit) {
        if (!unit.word(SI_NAME).orElse("").equals("METRE")) return OptionalDouble.empty();
        Optional<String> prefix = unit.word(NAME);
        if (prefix.isEmpty()) return OptionalDouble.of(MM_IN_A_METRE);
        Double factor = PREFIXES.get(prefix.get());
        return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor * MM_IN_A_METRE);
    }

    private static OptionalDouble converted(ModelFile file, StepEntity unit, int chain) {
        Optional<StepEntity> measure = file.entity(unit, FACTOR);
        Optional<StepEntity> base = measure.flatMap(one -> file.entity(one, 1));
        if (measure.isEmpty() || base.isEmpty()) return OptionalDouble.empty();
        OptionalDouble factor = measure.get().number(0);
        OptionalDouble of = millimetres(file, base.get(), chain - 1);
        return factor.isPresent() && of.isPresent()
                ? OptionalDouble.of(factor.getAsDouble() * of.getAsDouble())
                : OptionalDouble.empty();
    }
}
