package drylap.buildingmodel.step;

import drylap.buildingmodel.ModelSaid;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Reads a file of ISO 10303-21 as a stream: entities of wanted types are handed over one by one, all others are passed over. Instances that are put
 * together of several types, {@code #1=(A()B())}, are passed over, too: no IFC product is written so.
 */
public final class StepReader {
    private static final String BEGINS = "ISO-10303-21";
    private static final String ACCEPTED = ModelSaid.BEGINS.with();
    private static final String SCHEMA = "FILE_SCHEMA";

    private final StepWords words;
    private final StepValues values;
    private final StepLimits limits;
    private int entities;

    private StepReader(InputStream in, StepLimits limits) {
        words = new StepWords(new StepBytes(in, limits), limits);
        values = new StepValues(words, limits);
        this.limits = limits;
    }

    /** Whether a file begins as one of ISO 10303-21, blanks and a byte order mark passed over. */
    public static boolean begins(byte[] bytes) {
        int at = bytes.length > 2 && (bytes[0] & 0xFF) == 0xEF && (bytes[1] & 0xFF) == 0xBB ? 3 : 0;
        while (at < bytes.length && bytes[at] >= 0 && bytes[at] <= ' ') at++;
        for (int i = 0; i < BEGINS.length(); i++)
            if (at + i >= bytes.length || bytes[at + i] != BEGINS.charAt(i)) return false;
        return true;
    }

    /**
     * Reads all of it.
     *
     * @param wanted by type, in capitals
     * @return the names of its schemas, in capitals
     * @throws StepFault at the first place that cannot be read
     */
    public static List<String> read(
            InputStream in, StepLimits limits, Predicate<String> wanted, Consumer<StepEntity> each)
            throws IOException, StepFault {
        return new StepReader(in, limits).read(wanted, each);
    }

    private List<String> read(Predicate<String> wanted, Consumer<StepEntity> each) throws IOException, StepFault {
        words.passByteOrderMark();
        if (!words.word().equals(BEGINS)) throw words.fault(ModelSaid.BEGINS_OTHERWISE.with(BEGINS), ACCEPTED);
        words.must(';');
        section("HEADER");
        List<String> schemas = header();
        for (String word = words.word(); !word.equals("END-" + BEGINS); word = words.word()) {
            if (word.equals("DATA")) data(wanted, each);
            else pass(word);
        }
        words.must(';');
        return schemas;
    }

    private void section(String name) throws IOException, StepFault {
        if (!words.word().equals(name)) throw words.fault(ModelSaid.NO_SECTION.with(name), ACCEPTED);
        words.must(';');
    }

    private List<String> header() throws IOException, StepFault {
        List<String> schemas = new ArrayList<>();
        for (String word = words.word(); !word.equals("ENDSEC"); word = words.word()) {
            if (word.equals(SCHEMA)) schemas.addAll(schemas(values.all()));
            else if (words.ahead() != '(') throw words.fault(ModelSaid.NO_SECTION.with("DATA"), ACCEPTED);
            words.skip();
        }
        words.must(';');
        return schemas;
    }

    private static List<String> schemas(List<StepValue> parameters) {
        return parameters.stream()
                .flatMap(one ->
                        one instanceof StepValue.Many(var inner) ? inner.stream() : java.util.stream.Stream.of(one))
                .filter(StepValue.Text.class::isInstance)
                .map(one -> ((StepValue.Text) one).text().strip().toUpperCase(java.util.Locale.ROOT))
                .toList();
    }

    /** Sections that later editions have, such as ANCHOR. */
    private void pass(String section) throws IOException, StepFault {
        if (words.ended()) throw words.fault(ModelSaid.ENDS_IN_SECTION.with(section), ModelSaid.WHOLE_FILE.with());
        words.skip();
        while (words.ahead() == '#' || !words.word().equals("ENDSEC")) words.skip();
        words.must(';');
    }

    private void data(Predicate<String> wanted, Consumer<StepEntity> each) throws IOException, StepFault {
        words.skip();
        while (words.ahead() == '#') entity(wanted, each);
        if (!words.word().equals("ENDSEC")) throw words.fault(ModelSaid.NEITHER.with(), "ISO 10303-21");
        words.must(';');
    }

    private void entity(Predicate<String> wanted, Consumer<StepEntity> each) throws IOException, StepFault {
        int id = words.entity();
        words.within(id);
        if (++entities > limits.entities())
            throw words.fault(
                    ModelSaid.TOO_MANY.with(), ModelSaid.MOST_ENTITIES.with("%,d".formatted(limits.entities())));
        words.must('=');
        String type = words.ahead() == '(' ? "" : words.word();
        if (wanted.test(type)) {
            each.accept(new StepEntity(id, type, values.all()));
            words.must(';');
        } else words.skip();
        words.within(0);
    }
}
