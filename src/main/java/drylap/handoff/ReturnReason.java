package drylap.handoff;

import drylap.assembly.Step;
import drylap.kernel.Coded;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Why the follow-on trade gives an opening back; the first six doubt a lap, so that the work is redone from there. */
public enum ReturnReason implements Coded {
    APRON_HELD("apron-held", "lower edge of the apron is bonded or fastened down", Step.APRON),
    APRON_SHORT("apron-short", "apron too short for the jamb flashing", Step.APRON),
    OUT_OF_TRUE("out-of-true", "window out of plumb, level or square", Step.SET),
    JAMB_OPEN("jamb-open", "jamb flashing loose, or not over the apron", Step.JAMB_FLASHING),
    HEAD_OPEN("head-open", "head flashing does not cover the tops of the jamb flashing", Step.HEAD_FLASHING),
    FLAP_OPEN("flap-open", "head flap or its diagonal cuts not taped", Step.CLOSE_FLAP),
    REVERSE_LAP("reverse-lap", "a layer laps the wrong way round", null),
    BARRIER_TORN("barrier-torn", "barrier torn or creased beside the opening", null),
    NOT_CLEAN("not-clean", "dust, ice or water where the next layer bonds", null),
    PHOTO_MISSING("photo-missing", "no photo of the laps that will be covered", null),
    OTHER("other", "something else, as noted", null);

    private final String code;
    private final String words;
    private final @Nullable Step redoFrom;

    ReturnReason(String code, String words, @Nullable Step redoFrom) {
        this.code = code;
        this.words = words;
        this.redoFrom = redoFrom;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** The step from which the laps are no longer trusted; nothing where they may stay as they are. */
    public Optional<Step> redoFrom() {
        return Optional.ofNullable(redoFrom);
    }
}
