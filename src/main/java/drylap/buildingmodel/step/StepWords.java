package drylap.buildingmodel.step;

import drylap.buildingmodel.ModelSaid;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.function.IntPredicate;

/** The words of the clear text: blanks and comments are passed over between them. */
final class StepWords {
    private static final int LONGEST_NUMBER = 400;

    private final StepBytes bytes;
    private final StepLimits limits;
    private int entity;

    StepWords(StepBytes bytes, StepLimits limits) {
        this.bytes = bytes;
        this.limits = limits;
    }

    /** From here on faults are told of this entity; 0 of none. */
    void within(int id) {
        entity = id;
    }

    StepFault fault(String wrong, String accepted) {
        return new StepFault(bytes.line(), entity, wrong, accepted);
    }

    void passByteOrderMark() throws IOException, StepFault {
        if (bytes.peek() != 0xEF) return;
        for (int i = 0; i < 3; i++) bytes.next();
    }

    /** What comes next, not yet taken. */
    int ahead() throws IOException, StepFault {
        while (true) {
            int one = bytes.peek();
            if (one == '/') comment();
            else if (one != StepBytes.END && one <= ' ') bytes.next();
            else return one;
        }
    }

    private void comment() throws IOException, StepFault {
        bytes.next();
        if (bytes.next() != '*') throw fault(ModelSaid.NO_COMMENT.with(), ModelSaid.COMMENTS.with());
        int before = 0;
        for (int one = bytes.next(); ; one = bytes.next()) {
            if (one == StepBytes.END) throw fault(ModelSaid.ENDS_IN_COMMENT.with(), ModelSaid.WHOLE_FILE.with());
            if (before == '*' && one == '/') return;
            before = one;
        }
    }

    /** Takes it if it comes next. */
    boolean take(char one) throws IOException, StepFault {
        if (ahead() != one) return false;
        bytes.next();
        return true;
    }

    void must(char one) throws IOException, StepFault {
        int found = ahead();
        if (found == StepBytes.END)
            throw fault(ModelSaid.ENDS_IN_ENTITY_OR_SECTION.with(), ModelSaid.WHOLE_FILE.with());
        if (found != one) throw fault(ModelSaid.BELONGS.with(shown(found), shown(one)), "ISO 10303-21");
        bytes.next();
    }

    static String shown(int one) {
        return one > ' ' && one < 127 ? "\"%c\"".formatted(one) : ModelSaid.BYTE.with(one);
    }

    /** Capitals, digits, underlines and hyphens, in capitals. */
    String word() throws IOException, StepFault {
        ahead();
        String word = run(one -> Character.isLetterOrDigit(one) || one == '_' || one == '-' || one == '!');
        if (word.isEmpty()) throw fault(ModelSaid.NO_WORD.with(shown(bytes.peek())), "ISO 10303-21");
        return word.toUpperCase(java.util.Locale.ROOT);
    }

    /** The longest run of ASCII characters that pass. */
    String run(IntPredicate passes) throws IOException, StepFault {
        var run = new StringBuilder();
        while (bytes.peek() != StepBytes.END && bytes.peek() < 127 && passes.test(bytes.peek())) {
            run.append((char) bytes.next());
            if (run.length() > limits.characters()) throw tooLong();
        }
        return run.toString();
    }

    private StepFault tooLong() {
        return fault(ModelSaid.TOO_LONG.with(), ModelSaid.MOST_CHARACTERS.with(limits.characters()));
    }

    /** A string in quotes, its escapes resolved; line ends in it are none of its text. */
    String text() throws IOException, StepFault {
        var raw = new ByteArrayOutputStream();
        for (int one = inQuotes(); one != StepBytes.END; one = inQuotes()) {
            if (one >= ' ') raw.write(one);
            if (raw.size() > limits.characters()) throw tooLong();
        }
        return StepText.of(raw.toByteArray());
    }

    /** The next byte of a string whose first quote is taken; {@link StepBytes#END} after its last quote. */
    private int inQuotes() throws IOException, StepFault {
        int one = bytes.next();
        if (one == StepBytes.END) throw fault(ModelSaid.ENDS_IN_TEXT.with(), ModelSaid.TEXTS.with());
        if (one != '\'') return one;
        if (bytes.peek() != '\'') return StepBytes.END;
        return bytes.next();
    }

    /** Passes over everything up to the semicolon that ends it. */
    void skip() throws IOException, StepFault {
        for (int one = ahead(); ; one = ahead()) {
            if (one == StepBytes.END) throw fault(ModelSaid.ENDS_IN_ENTITY.with(), ModelSaid.WHOLE_FILE.with());
            bytes.next();
            if (one == ';') return;
            if (one == '\'') while (inQuotes() != StepBytes.END) continue;
        }
    }

    /** An integer or a real, finite. */
    double number() throws IOException, StepFault {
        String digits = run(one -> (one >= '0' && one <= '9') || "+-.eE".indexOf(one) >= 0);
        if (!digits.matches("[+-]?\\d+(\\.\\d*)?([eE][+-]?\\d+)?") || digits.length() > LONGEST_NUMBER)
            throw fault(ModelSaid.NO_NUMBER.with(shortened(digits)), ModelSaid.NUMBERS.with());
        double value = Double.parseDouble(digits);
        if (Double.isFinite(value)) return value;
        throw fault(ModelSaid.BEYOND.with(shortened(digits)), ModelSaid.BELOW.with());
    }

    private static String shortened(String text) {
        return text.length() > 30 ? text.substring(0, 30) + "..." : text;
    }

    /** The number behind a #. */
    int entity() throws IOException, StepFault {
        must('#');
        String digits = run(one -> one >= '0' && one <= '9');
        boolean fits = digits.matches("\\d{1,10}") && Long.parseLong(digits) <= Integer.MAX_VALUE;
        if (!fits || Integer.parseInt(digits) == 0)
            throw fault(ModelSaid.NO_ENTITY.with(shortened(digits)), ModelSaid.ENTITY_NUMBERS.with(Integer.MAX_VALUE));
        return Integer.parseInt(digits);
    }

    /** Whether the file ends here. */
    boolean ended() throws IOException, StepFault {
        return ahead() == StepBytes.END;
    }
}
