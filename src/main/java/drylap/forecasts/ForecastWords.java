package drylap.forecasts;

import drylap.speech.KeptWords;
import drylap.speech.Saying;
import java.util.Arrays;
import java.util.stream.Stream;

/**
 * What is written of forecasts in English and kept so: how a fetch ended, what is wrong with what was sent and what would be accepted,
 * remarks on what was read. It is read back to be said to others.
 */
public enum ForecastWords {
    HOURS("{0} hours"),
    ONE_HOUR("1 hour"),
    STILL_HOLDS("the last forecast still holds"),
    CAME_AGAIN("the same forecast came again"),
    NO_SITE("no job folder has site {0} any more"),
    REFUSES("{0} refuses (403); see that the user agent in the settings names who asks"),
    KNOWS_NONE("{0} knows no forecast for this place (404)"),
    ASKED_TOO_OFTEN("{0} is asked too often (429)"),
    OUT_OF_ORDER("{0} is out of order ({1})"),
    STATUS("{0} answers with status {1}"),
    NOT_WITHIN("{0} did not answer within {1} s"),
    NOT_IN_TIME("{0} did not answer in time"),
    NO_CONNECTION("{0} took no connection in time"),
    NOT_REACHED("{0} cannot be reached"),
    SENT_TOO_MUCH("{0} sent more than 8 MiB, which is no forecast of one place"),
    BROKE_OFF("the answer of {0} broke off ({1})"),
    NO_ADDRESS("no address is set for {0}"),
    BAD_ADDRESS("the address set for {0} is none ({1})"),
    NO_CELL("{0} names no grid cell"),
    NO_CELL_HERE("{0} names no grid cell for this place"),
    NOBODY_ASKED("nobody is asked for a file that was brought in"),
    PROBLEM("{0}: {1} – {2} is accepted"),
    PROBLEMS("{0} (and {1} more)"),

    THE_FILE("the file"),
    THE_ANSWER("the answer"),
    LINE("line {0}"),
    CELL("line {0}, {1}"),
    AT("line {0}, column {1}"),
    LISTED("{0}, {1}"),

    NO_CSV("is no CSV ({0})"),
    CSV_STANDARD("CSV as in RFC 4180"),
    BYTES("has {0} bytes"),
    MOST_BYTES("at most 8 MiB"),
    NOT_UTF_8("is not UTF-8"),
    UTF_8("a file in UTF-8"),
    NOT_IN_HEADER("is missing from the header"),
    NO_COLUMN("is not a column of a forecast"),
    HEADER("the header {0} with site and chance_from where needed"),
    CELLS("has {0} cells"),
    AS_MANY_CELLS("as many cells as the header"),
    NO_ROW("has no row for site {0}"),
    ONE_ROW("at least one row for it"),
    AFTER_HOUR("is after hour_start"),
    UP_TO_HOUR("blank, or a time up to hour_start"),
    NO_OFFSET("is no time with an offset ({0})"),
    OFFSET_TIME("a time such as 2026-04-13T07:00-07:00"),
    NO_NUMBER("is no number ({0})"),
    NUMBER_OR_BLANK("a number with a point, or a blank"),

    NO_CORNER("has no corner"),
    POLYGON("a polygon of longitudes and latitudes"),
    TOLD_IN_UNIT("is told in an unknown unit ({0})"),
    LONG_INTERVAL("has an interval too long ({0})"),
    MOST_HOURS("at most {0} hours"),
    NO_INTERVAL("has a validTime that is no interval ({0})"),
    INTERVAL("a time with offset, a slash and whole hours, such as 2024-02-23T12:00:00Z/PT6H,"),
    AGAIN("tells the {0} of the hour from {1} again"),
    ONCE("each hour once"),
    OUT_OF_STEP("is out of step ({0})"),
    IN_STEP("whole hours from {0}"),
    TOO_FAR("reaches over {0} hours or more"),
    AS_FAR("a forecast of at most {0} hours"),

    NO_JSON("is no JSON ({0})"),
    JSON("whole JSON in UTF-8"),
    NO_JSON_OBJECT("is no JSON object"),
    JSON_OBJECT("a JSON object"),
    AN_OBJECT("an object"),
    A_LIST("a list"),
    A_TEXT("a text"),
    A_NUMBER("a number"),
    NO_TIME("is no time ({0})"),
    TIME_WITH_OFFSET("a time with its offset"),
    IS_NULL("is null"),
    IS_MISSING("is missing"),
    IS_A_LIST("is a list"),
    IS_AN_OBJECT("is an object"),
    HOLDS("holds {0}"),

    NO_PLACE("is no place"),
    A_PLACE("a longitude and a latitude"),
    NOT_AFTER_STEP("is not after the step before ({0} after {1})"),
    STEPS("steps in order, each at least an hour after the other,"),
    UNKNOWN_UNIT_OF("{0} is an unknown unit ({1})"),
    UNKNOWN_UNIT("is an unknown unit ({0})"),
    NEAR("a place within {0} km of the site ({1}, {2}), latitude and longitude not swapped"),
    NOT_ON_EARTH("is no place on Earth (latitude {0}, longitude {1})"),
    FAR("is {0} km from the site"),

    SOURCE_REFUSES("the source refuses: {0}"),
    NO_REASON("no reason given"),
    HOURLY("hourly values"),
    UNKNOWN("is unknown"),
    TIME_FORMATS("iso8601 or unixtime"),
    NOT_NEXT("does not follow the hour before ({0} after {1})"),
    NEXT("one time an hour, in order, at the one offset of utc_offset_seconds also where the clocks change,"),
    MOST_OFFSET("at most 18 hours in seconds"),
    SECONDS("seconds since 1970"),
    LOCAL_TIME("a time such as 2026-11-25T00:00"),
    VALUES_FOR_TIMES("has {0} values for {1} times"),
    VALUE_FOR_TIME("one value for each time"),

    RAIN("rain amount"),
    CHANCE("chance of rain"),
    WIND("wind speed"),
    GUST("gust speed"),
    WIND_FROM("wind direction"),
    TEMPERATURE("temperature"),
    HUMIDITY("relative humidity"),
    PERCENT("percent"),
    DEGREES("degrees"),
    UNITS("one of the units {0}"),
    NOT_FINITE("is not finite"),
    NEGATIVE("is negative ({0})"),
    TOO_SMALL("is too small ({0})"),
    TOO_LARGE("is too large ({0})"),
    RANGE("a number of {0} from {1} to {2}"),

    ENDS("ends at {0}: the next hour has no {1}"),
    VALUES("values"),
    NO_WHOLE_HOUR("has no hour of which all is told"),
    TELLS_NO("tells no {0}"),
    WHOLE_HOUR("at least one hour with rain amount, wind, direction and temperature"),
    GAP("missing values, for which the worse of those before and after stand: {0} from {1}"),
    NO_CHANCE("no chance of rain told, so rain of 0.1 mm or more counts as certain and less as none: {0} from {1}"),
    NO_GUST("no gusts told, so 1.6 times the mean wind stands for them: {0} from {1}"),
    RAIN_WITHOUT_CHANCE("contradiction, rain with a chance of 0 %: {0} from {1}"),
    CHANCE_WITHOUT_RAIN("contradiction, no rain with a chance of 90 % or more: {0} from {1}"),
    GUST_BELOW_MEAN("contradiction, gust below the mean wind, which stands for it: {0} from {1}");

    private static final KeptWords KEPT = new KeptWords(Stream.concat(
            Arrays.stream(values()).map(one -> one.sentence),
            Arrays.stream(ForecastSource.values()).map(ForecastSource::words)));

    private final String sentence;

    ForecastWords(String sentence) {
        this.sentence = sentence;
    }

    /** As it is written down. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** What was written, to be said in other languages; other words stay as they are. */
    public static Saying read(String written) {
        return KEPT.read(written);
    }
}
