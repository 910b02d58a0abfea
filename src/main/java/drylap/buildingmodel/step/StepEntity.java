package drylap.buildingmodel.step;

import drylap.buildingmodel.step.StepValue.Many;
import drylap.buildingmodel.step.StepValue.Number;
import drylap.buildingmodel.step.StepValue.Reference;
import drylap.buildingmodel.step.StepValue.Text;
import drylap.buildingmodel.step.StepValue.Typed;
import drylap.buildingmodel.step.StepValue.Unset;
import drylap.buildingmodel.step.StepValue.Word;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One entity of the data section. Its parameters are asked for by place, from 0; what is not there, or of another kind, is empty.
 *
 * @param type in capitals
 */
public record StepEntity(int id, String type, List<StepValue> values) {
    private static final StepValue NONE = new Unset();

    public StepEntity {
        values = List.copyOf(values);
    }

    public StepValue value(int place) {
        return place < values.size() ? values.get(place) : NONE;
    }

    /** Not blank. */
    public Optional<String> text(int place) {
        return value(place) instanceof Text(var text) && !text.isBlank() ? Optional.of(text.strip()) : Optional.empty();
    }

    /** A number, also where it stands with its type. */
    public OptionalDouble number(int place) {
        return number(value(place));
    }

    private static OptionalDouble number(StepValue value) {
        return switch (value) {
            case Number(double number) -> OptionalDouble.of(number);
            case Typed typed
            when typed.values().size() == 1 -> number(typed.values().getFirst());
            default -> OptionalDouble.empty();
        };
    }

    public List<Double> numbers(int place) {
        return value(place) instanceof Many(var all)
                ? all.stream()
                        .map(StepEntity::number)
                        .flatMap(one -> one.stream().boxed())
                        .toList()
                : List.of();
    }

    public OptionalInt reference(int place) {
        return value(place) instanceof Reference(int entity) ? OptionalInt.of(entity) : OptionalInt.empty();
    }

    public List<Integer> references(int place) {
        return value(place) instanceof Many(var all)
                ? all.stream()
                        .filter(Reference.class::isInstance)
                        .map(one -> ((Reference) one).entity())
                        .toList()
                : List.of();
    }

    /** A word between full stops, also where it stands with its type. */
    public Optional<String> word(int place) {
        return word(value(place));
    }

    private static Optional<String> word(StepValue value) {
        return switch (value) {
            case Word(var word) -> Optional.of(word);
            case Typed typed
            when typed.values().size() == 1 -> word(typed.values().getFirst());
            default -> Optional.empty();
        };
    }
}
