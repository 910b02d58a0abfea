package drylap.assembly;

import static drylap.assembly.Layer.Kind.BARRIER;
import static drylap.assembly.Layer.Kind.BASE;
import static drylap.assembly.Layer.Kind.BOND;
import static drylap.assembly.Layer.Kind.FINISH;
import static drylap.assembly.Layer.Kind.FLASHING;
import static drylap.assembly.Layer.Kind.SECOND_BARRIER;
import static drylap.assembly.Layer.Kind.WINDOW;

import drylap.kernel.Coded;
import drylap.speech.Saying;

/** A layer at an opening; one at the jambs stands for the left and the right, which follow the same laps. */
public enum Layer implements Coded {
    RO("rough opening", BASE),
    PAN("sill pan", FLASHING),
    APR("apron", FLASHING),
    W1S("first barrier below the sill", BARRIER),
    W1J("first barrier beside the jambs", BARRIER),
    W1H("first barrier above the head", BARRIER),
    JF("jamb flashing", FLASHING),
    BJ("sealant bed behind the jamb flange", BOND),
    BH("sealant bed behind the head flange", BOND),
    BS("sealant bed behind the sill flange", BOND),
    FLS("sill flange", WINDOW),
    FLJ("jamb flange", WINDOW),
    FLH("head flange", WINDOW),
    HF("head flashing", FLASHING),
    W2S("second barrier below the sill", SECOND_BARRIER),
    W2J("second barrier beside the jambs", SECOND_BARRIER),
    W2H("second barrier above the head", SECOND_BARRIER),
    TRM("sill closure", SECOND_BARRIER),
    CLD("cladding", FINISH),
    IAS("interior air seal", BOND);

    /** What a layer is for; a bond seals but never counts as a lap. */
    public enum Kind {
        BASE,
        FLASHING,
        BARRIER,
        SECOND_BARRIER,
        WINDOW,
        BOND,
        FINISH
    }

    private final String words;
    private final Kind kind;

    Layer(String words, Kind kind) {
        this.words = words;
        this.kind = kind;
    }

    @Override
    public String code() {
        return name();
    }

    /** The trade's words for it. */
    public String words() {
        return words;
    }

    public Saying saying() {
        return Saying.of(words);
    }

    public Kind kind() {
        return kind;
    }

    /** The step that puts the layer in place: the window with its flanges and beds goes in at once. */
    public Step placedBy() {
        return switch (this) {
            case RO -> Step.ACCEPT;
            case BJ, BH, BS, FLS, FLJ, FLH -> Step.SET;
            case PAN -> Step.PAN;
            case APR -> Step.APRON;
            case W1S -> Step.BARRIER_SILL;
            case W1J -> Step.BARRIER_JAMB;
            case W1H -> Step.BARRIER_HEAD;
            case JF -> Step.JAMB_FLASHING;
            case HF -> Step.HEAD_FLASHING;
            case W2S -> Step.SECOND_SILL;
            case W2J -> Step.SECOND_JAMB;
            case W2H -> Step.SECOND_HEAD;
            case TRM -> Step.CLOSURE;
            case CLD -> Step.CLADDING;
            case IAS -> Step.AIR_SEAL;
        };
    }
}
