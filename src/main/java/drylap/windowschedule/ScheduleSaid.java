package drylap.windowschedule;

import drylap.buildingmodel.ModelSaid;
import drylap.speech.KeptWords;
import drylap.speech.Saying;
import java.util.Arrays;
import java.util.stream.Stream;

/**
 * What is said of a window schedule: why a file is refused, what is wrong with a row and what would be accepted, what is lacking. It is
 * written in English from these sentences, and read back to be said to others.
 */
public enum ScheduleSaid {
    PART("part {0}"),
    SHEET("sheet {0}, {1}"),
    ROW("row {0}"),
    ROW_OR_AFTER("row {0} or after"),
    CELL("cell {0}"),
    LISTED("{0}, {1}"),
    ALSO("{0}; {1}"),
    FILES("an XLSX workbook, a CSV file or an IFC model in clear text"),
    NO_TEXT("is no text"),
    NOTHING("holds no text at all"),
    A_SCHEDULE("a window schedule with a row of titles"),
    QUOTES("has quotes that do not pair up"),
    PAIRED("a cell in \"quotes\" with each inner quote doubled"),
    MANY_WINDOWS("has too many windows"),
    MOST_WINDOWS("at most {0} windows"),
    LONG_NAME("has a name that is too long"),
    MUCH_TEXT("holds too much text"),
    MOST_IN_CELL("at most {0} characters in a cell"),
    MANY_ROWS("is one row too many"),
    MOST_ROWS("at most {0} rows"),
    MANY_COLUMNS("has too many columns"),
    MOST_COLUMNS("at most {0} columns"),
    OLDER("is a workbook of the older kind or locked by a password"),
    BROKEN("is a broken or cut off zip file"),
    NO_WORKBOOK("is no workbook that can be read"),
    WORKBOOK("an XLSX workbook as an office program saves it"),
    DOCUMENT_TYPE("has a document type"),
    NOT_WELL_FORMED("is not well-formed"),
    MANY_PARTS("holds too many parts"),
    MOST_PARTS("at most {0} parts"),
    UNPACKS("unpacks to too much"),
    IN_ALL("at most {0} in all"),
    UNPACKS_TIMES("unpacks to more than {0} times its size"),
    AS_USUAL("a workbook that was packed as usual"),
    A_DATE("a date ({0})"),
    IN_THE_MODEL("in the model {0}"),
    NOT_TOLD("not told: {0}"),
    FACES("faces {0}°"),
    FACES_IN_PLANE("faces {0}°, plane {1} of {2} from outside"),

    BLANK("is blank"),
    NAME("a name of 1 to {0} characters"),
    TOO_LONG("is too long"),
    CONTROL("holds a line end or another control character"),
    NO_FACADE("is no facade of the site"),
    FACADES("{0}, or a facade chosen for this elevation,"),
    NO_MATERIAL("is no known material"),
    MATERIALS("one of wood, aluminum, vinyl, fiberglass"),
    TWO_WAYS("is a letter that schedules use in two ways"),
    LETTERS("A1, B1, or a meaning said for the letters"),
    UNKNOWN("is unknown"),
    ONE_OF("one of {0}"),
    SAYS_IT("a cell that says it, or one choice for all rows that do not,"),
    NOT_WHOLE("is not a whole number"),
    WHOLE("a whole number from {0} to {1}"),
    TOO_SMALL("is too small"),
    TOO_LARGE("is too large"),
    NO_UNIT("has no unit"),
    A_UNIT("a unit in the cell or in its title, or one said for the whole schedule,"),
    BLANK_OR_LENGTH("a blank cell, or a length up to {0} mm"),
    NO_PAIR("is no width and height"),
    A_PAIR("a size such as 3'-0\" x 4'-6\" or 900 x 1500 mm"),
    COMMA("has a comma that may part thousands or decimals"),
    UNKNOWN_UNIT("has an unknown unit"),
    NO_LENGTH("is not a length"),
    TWELVE_INCHES("has 12 inches or more beside its feet"),
    METRIC_FRACTION("has a fraction of a metric unit"),
    ODD_FRACTION("has a fraction that is none of halves to 64ths below one"),
    SMALLER("is smaller than the frame"),
    AS_LARGE("a rough opening as large as the frame or larger"),
    A_SIZE("a size of the frame or of the rough opening"),
    ROUGH_RANGE("a rough opening from {0} to {1} mm"),
    AT_OTHER_SITE("makes opening {0}, which stands at site {1}"),
    BY_OTHER_ROW("makes opening {0}, which row {1} makes too"),
    OWN_MARK("a mark or a prefix of its own"),
    NO_MINUTES("has no minutes for {0} in the labour table"),
    WITH_MINUTES("a method with minutes in labour.csv"),

    CHOOSE_MARKS("Choose the column of the marks."),
    CHOOSE_APPROACH("Choose the approach of new openings: drainage or barrier."),
    CHOOSE_LAYER("Choose the second layer of new openings."),
    CHOOSE_DATE("Choose the first date on which new openings have their windows."),

    FACADE("facade"),
    LEVEL("level"),
    WIDTH("width"),
    HEIGHT("height"),
    FRAME("frame"),
    METHOD("method");

    private static final KeptWords KEPT = new KeptWords(Stream.of(
                    Arrays.stream(values()).map(one -> one.sentence),
                    ModelSaid.sentences(),
                    Stream.of(Lengths.ACCEPTED))
            .flatMap(one -> one)
            .distinct());

    private final String sentence;

    ScheduleSaid(String sentence) {
        this.sentence = sentence;
    }

    /** As it is written. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** What was written, to be said in other languages; other words, as those of a schedule itself, stay as they are. */
    public static Saying read(String written) {
        return KEPT.read(written);
    }
}
