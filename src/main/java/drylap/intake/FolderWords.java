package drylap.intake;

import drylap.kernel.Rule;
import drylap.sites.StreetAddress;
import drylap.speech.KeptWords;
import drylap.speech.Saying;
import drylap.whatif.CannotBe;
import java.util.Arrays;
import java.util.stream.Stream;

/**
 * What is said of the files of a job folder: what is wrong, what would be accepted, what should be known. Messages are written in English
 * from these sentences, and read back to be said to others.
 */
public enum FolderWords {
    NOT_LISTED("cannot be listed"),
    READABLE_FOLDER("a folder that this program may read"),
    EMPTY("is empty"),
    MISSING("is missing"),
    FILE_WITH_HEADER("a CSV file with the header {0}"),
    NO_ROWS("has no rows"),
    A_ROW("at least one row"),
    MORE_THAN_IT_SAYS("more than it says"),
    NOT_READ("cannot be read"),
    READABLE_FILE("a file that this program may read"),
    FILE_OF("a file of at most {0}"),
    NO_ZIP("is not a zip file that can be read"),
    A_ZIP("a zip file"),
    READABLE_ZIP("a zip file that this program may read"),
    MANY_ENTRIES("holds too many entries"),
    MOST_ENTRIES("at most {0} entries"),
    LEADS_OUT("holds a path that leads out of it"),
    PLAIN_NAME("a file name without .., drive or leading /"),
    MANY_FOLDERS("holds files in more than one folder"),
    ONE_FOLDER("files at the top or all in one folder"),
    FILE_TWICE("holds a file twice"),
    FILE_ONCE("each file once"),
    LARGE_UNPACKED("is too large when unpacked"),
    AT_MOST("at most {0}"),

    NOT_UTF_8("is not UTF-8"),
    BYTE("byte {0}"),
    UTF_8("a file in UTF-8"),
    QUOTES("has quotes that do not pair up"),
    PAIRED("a cell in \"quotes\" with each inner quote doubled"),
    HEADER("header"),
    NO_COLUMN("is not a column of this file"),
    COLUMN_TWICE("stands twice in the header"),
    NOT_IN_HEADER("is missing from the header"),
    THE_HEADER("the header {0}"),
    CELLS("has the wrong number of cells"),
    LINE_OF("a line of {0} cells as in the header"),

    BLANK("is blank"),
    SPACES("has spaces around it"),
    CONTROL("holds a control character"),
    TOO_LONG("is too long"),
    NAME("a name of 1 to 100 characters without spaces around it"),
    NO_DATE("is not a date"),
    DATE("a date such as 2026-04-13, from the year 2000 to 2099,"),
    NO_CLOCK("is not a time of day"),
    CLOCK("a time such as 07:30, from 00:00 to 23:59,"),
    NO_INSTANT("is not a time with an offset"),
    INSTANT("a time such as 2026-04-13T07:00-07:00, from the year 2000 to 2099,"),
    NO_ZONE("is not a known time zone"),
    ZONE("an IANA time zone such as America/Los_Angeles"),
    NOT_WHOLE("is not a whole number"),
    NOT_NUMBER("is not a number"),
    NOT_FINITE("is not finite"),
    NOT_PLAIN("is not a plain decimal number"),
    NEGATIVE("is negative"),
    TOO_SMALL("is too small"),
    TOO_LARGE("is too large"),
    WHOLE("a whole number from {0} to {1}"),
    WHOLE_OF("a whole number of {0} from {1} to {2}"),
    NUMBER("a number from {0} to {1}"),
    NUMBER_OF("a number of {0} from {1} to {2}"),
    DEGREES("degrees"),
    MINUTES("minutes"),
    PEOPLE("people"),
    PERCENT("percent"),
    UNKNOWN("is unknown"),
    ONE_OF("one of {0}"),
    NEITHER("is neither yes nor no"),
    YES_OR_NO("yes, no or blank"),

    SITE("site"),
    A_SITE("a site"),
    A_SITE_OF("a site of {0}"),
    FACADE("facade"),
    A_FACADE("a facade"),
    A_FACADE_OF("a facade of {0}"),
    OPENING("opening"),
    AN_OPENING("an opening"),
    AN_OPENING_OF("an opening of {0}"),
    CREW("crew"),
    A_CREW("a crew"),
    A_CREW_OF("a crew of {0}"),
    SHIFT("shift of this crew and date"),
    A_SHIFT("a shift of this crew and date"),
    VISIT("visit of this opening and task"),
    A_VISIT("a visit of this opening and task"),
    RULE("rule"),
    A_RULE("a rule"),
    LABOUR("row of this task and method"),
    A_LABOUR("a row of this task and method"),
    LEG("leg between these places"),
    A_LEG("a leg between these places"),
    STANDS_ALREADY("stands for {0} of line {1} already"),
    ONCE("each {0} once"),
    REFERS("refers to no {0}"),

    DONE_AT("is given though nothing is done"),
    BLANK_OR_DONE("a blank cell, or a number in done,"),
    NO_TASK("holds an unknown task"),
    TASKS("test, wrap and clad with ; between"),
    NO_METHOD("holds an unknown method"),
    METHODS("blank for all, or a list such as A1;B1 of {0}"),
    ID_OF_SITE("is the id of a site too"),
    OWN_ID("an id of its own"),
    NOT_AFTER_START("is not after the start"),
    AFTER("a time after {0}"),
    BEFORE_END("is before the end"),
    FROM_ON("blank, or a time from {0} on"),
    NO_BREAK_START("is blank though the break has an end"),
    NO_BREAK_END("is blank though the break has a start"),
    BREAK_ENDS_FIRST("is not after the break's start"),
    BEFORE_SHIFT("is before the shift"),
    AFTER_SHIFT("is after the shift"),
    BREAK_WITHIN("a break within {0} to {1}"),
    NO_TIME("makes a task that takes no time, with per_m2_min 0"),
    TAKES_TIME("a task that takes time"),
    METHOD_OR_ANY("one of {0} or * for any"),
    NO_ROW_FOR("has no row for {0} of method {1}"),
    ROW_OF_TASK("a row of that task and method, or of method *,"),
    NOT_ZERO("is not 0 though the leg stays at one place"),
    NO_PLACE("refers to no site and no crew"),
    A_PLACE("a site of sites.csv or a crew of crews.csv"),
    AFTER_HOUR("is after hour_start"),
    UP_TO("blank, or a time up to {0}"),
    GAP("leaves a gap in the site's hours"),
    HOUR_TWICE("stands for an hour of line {0} already"),
    OVERLAPS("overlaps the hour of line {0}"),
    HOUR_FROM("the hour from {0}"),
    OTHER_HOUR("is neither the row's own hour nor that of the hour before"),
    BLANK_OR("blank, or {0}"),
    DIFFERS("differs within one chance_from"),
    WHOLE_PLAN("is given for {0}, which weighs the whole plan"),
    BLANK_CELL("a blank cell"),
    NOT_WHERE("is not where opening {0} is"),
    FACADE_IS("facade {0}"),
    LEVEL_IS("level {0}"),
    NOT_NEEDED("is not needed at opening {0}"),
    OTHER_TRADE("is not of the trade of crew {0}"),
    OTHER_DATE("is not the date of the start"),
    DATE_OF("the date of {0}"),
    OUTSIDE("holds a visit outside the shifts of crew {0}"),
    PIN("a pin within a shift"),

    MONTH_TWICE("is given twice"),
    MONTH_ONCE("each month once for a site"),
    NO_FIT("does not fit: {0}"),
    RAIN_DAYS("{0} days of rain are outside {1}"),
    COLD_DAYS("{0} cold days are outside {1}"),
    GUST_DAYS("{0} days of gusts are outside {1}"),
    DAYS_OF_MONTH("days that the month has"),

    NAME_AS_IT_IS("is the name of the folder without a change"),
    ANOTHER_NAME("another name"),
    CANNOT_BE("cannot be made: {0}"),
    ALLOWED("a change that the folder, changed so far, allows"),
    NO_FILE("is no file"),
    FILE_BESIDE("the name of a file like forecast.csv beside the scenarios"),
    ONE_OF_OR("one of {0} or {1}"),
    TAKEN("stands for a crew or a site already"),
    FREE("a name that is not taken"),
    NOT_AFTER_FROM("is not after from"),
    AFTER_FROM("a later time than from"),
    BLANK_BOTH("is blank, and so is {0}"),
    BESIDE("stands beside {0}"),
    ONE_OF_BOTH("one of both"),

    IGNORED("{0} is not a file of a job folder and was ignored"),
    NO_FORECAST("{0}: no forecast; every hour is marked beyond the forecast"),
    FORECAST_ENDS("{0}: the forecast ends at {1}, before the last shift; later hours are marked beyond the forecast"),
    ONE_SITE("site {0}"),
    SITES("sites {0}"),
    MANY_SITES("{0} sites ({1}, …)");

    private static final KeptWords KEPT = new KeptWords(Stream.of(
                    Arrays.stream(values()).map(one -> one.sentence),
                    StreetAddress.SENTENCES.stream(),
                    CannotBe.sentences(),
                    Arrays.stream(Rule.values()).map(Rule::unit))
            .flatMap(one -> one)
            .filter(one -> !one.isEmpty())
            .distinct());

    private final String sentence;

    FolderWords(String sentence) {
        this.sentence = sentence;
    }

    /** As a message has it. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** What a message says, to be said in other languages; other words stay as they are. */
    public static Saying read(String message) {
        return KEPT.read(message);
    }

    /** What stands in a cell of a file is data, unless it was written for the message. */
    public static Saying readCell(String text) {
        boolean ours =
                text.equals(HEADER.sentence) || text.equals(MORE_THAN_IT_SAYS.sentence) || text.startsWith("byte 0x");
        return ours ? read(text) : Saying.asItIs(text);
    }
}
