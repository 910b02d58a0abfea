package drylap.assembly;

import drylap.kernel.Coded;
import drylap.speech.Saying;

/** A lap as the method requires it: {@code over} lies outboard of {@code under} where the two meet. */
public record Lap(Layer over, Layer under, Kind kind, Order order) {
    /** How the two meet; only a vertical lap is held by gravity alone. */
    public enum Kind implements Coded {
        VERTICAL("V"),
        LATERAL("L"),
        FACE("F");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Which of the two is placed first, and what is done to its edge. */
    public enum Order implements Coded {
        NORMAL("normal"),
        TUCK("tuck"),
        FLAP("flap");

        private final String code;

        Order(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    public boolean vertical() {
        return kind == Kind.VERTICAL;
    }

    public boolean joins(Layer one, Layer other) {
        return over == one && under == other || over == other && under == one;
    }

    public Saying saying() {
        return Saying.of("{0} over {1}", over.saying(), under.saying());
    }

    public String words() {
        return saying().words();
    }
}
