package drylap.buildingmodel.step;

import java.util.List;

/** A parameter of an entity, as ISO 10303-21 writes it. */
public sealed interface StepValue {
    /** @param text with its escapes resolved */
    record Text(String text) implements StepValue {}

    /** An integer or a real; both are finite. */
    record Number(double value) implements StepValue {}

    /** Another entity, {@code #12}. */
    record Reference(int entity) implements StepValue {}

    /** A word between full stops, {@code .METRE.}, as are the logical values. */
    record Word(String word) implements StepValue {}

    /** @param type in capitals, {@code IFCLENGTHMEASURE(2.)} */
    record Typed(String type, List<StepValue> values) implements StepValue {
        public Typed {
            values = List.copyOf(values);
        }
    }

    record Many(List<StepValue> values) implements StepValue {
        public Many {
            values = List.copyOf(values);
        }
    }

    /** {@code $}: not given. */
    record Unset() implements StepValue {}

    /** {@code *}: follows from others. */
    record Derived() implements StepValue {}
}
