package drylap.buildingmodel.step;

import drylap.buildingmodel.ModelSaid;
import drylap.buildingmodel.step.StepValue.Derived;
import drylap.buildingmodel.step.StepValue.Many;
import drylap.buildingmodel.step.StepValue.Number;
import drylap.buildingmodel.step.StepValue.Reference;
import drylap.buildingmodel.step.StepValue.Text;
import drylap.buildingmodel.step.StepValue.Typed;
import drylap.buildingmodel.step.StepValue.Unset;
import drylap.buildingmodel.step.StepValue.Word;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The parameters of entities: values, and lists of them in brackets, within lists. */
final class StepValues {
    private final StepWords words;
    private final StepLimits limits;
    private int count;

    StepValues(StepWords words, StepLimits limits) {
        this.words = words;
        this.limits = limits;
    }

    /** All parameters of one entity, brackets included. */
    List<StepValue> all() throws IOException, StepFault {
        count = 0;
        return list(1);
    }

    private List<StepValue> list(int depth) throws IOException, StepFault {
        if (depth > limits.depth())
            throw words.fault(ModelSaid.TOO_DEEP.with(), ModelSaid.MOST_OF_THEM.with(limits.depth()));
        words.must('(');
        List<StepValue> values = new ArrayList<>();
        if (words.take(')')) return values;
        do {
            if (++count > limits.values())
                throw words.fault(ModelSaid.MANY_VALUES.with(), ModelSaid.AT_MOST.with(limits.values()));
            values.add(value(depth));
        } while (words.take(','));
        words.must(')');
        return values;
    }

    private StepValue value(int depth) throws IOException, StepFault {
        int ahead = words.ahead();
        return switch (ahead) {
            case '(' -> new Many(list(depth + 1));
            case '#' -> new Reference(words.entity());
            case '\'', '"', '$', '*', '.' -> marked((char) ahead);
            case StepBytes.END -> throw words.fault(ModelSaid.ENDS_IN_ENTITY.with(), ModelSaid.WHOLE_FILE.with());
            default ->
                ahead == '-' || ahead == '+' || (ahead >= '0' && ahead <= '9')
                        ? new Number(words.number())
                        : new Typed(words.word(), list(depth + 1));
        };
    }

    private StepValue marked(char mark) throws IOException, StepFault {
        words.must(mark);
        return switch (mark) {
            case '\'' -> new Text(words.text());
            case '"' -> bits();
            case '.' -> between();
            case '$' -> new Unset();
            default -> new Derived();
        };
    }

    /** A word between full stops. */
    private StepValue between() throws IOException, StepFault {
        String word = words.word();
        words.must('.');
        return new Word(word);
    }

    /** Binary digits, which no wanted parameter has. */
    private StepValue bits() throws IOException, StepFault {
        words.run(one -> Character.digit(one, 16) >= 0);
        words.must('"');
        return new Unset();
    }
}
