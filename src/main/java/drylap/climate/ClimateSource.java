package drylap.climate;

import drylap.speech.KeptWords;
import drylap.speech.Saying;
import java.util.Arrays;

/** The sentences that say where a climate comes from. Odds keep them in English; they are read back to be said to others. */
public enum ClimateSource {
    ASSUMED("assumed: the rule beyond_rain_p"),
    FORECASTS("{0} days of forecasts of the site"),
    NORMALS("monthly normals"),
    ALL_BUT_ONE("monthly normals; assumed by the rule beyond_rain_p in 1 month"),
    SOME("monthly normals; assumed by the rule beyond_rain_p in {0} months");

    private static final KeptWords KEPT = new KeptWords(Arrays.stream(values()).map(one -> one.sentence));

    private final String sentence;

    ClimateSource(String sentence) {
        this.sentence = sentence;
    }

    static ClimateSource lacking(int months) {
        return switch (months) {
            case 0 -> NORMALS;
            case 1 -> ALL_BUT_ONE;
            default -> SOME;
        };
    }

    /** As it is kept and written in files. */
    String with(int number) {
        return Saying.of(sentence, number).words();
    }

    /** What was written, to be said in other languages; other words stay as they are. */
    public static Saying read(String words) {
        return KEPT.read(words);
    }
}
