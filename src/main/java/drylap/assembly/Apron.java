package drylap.assembly;

import drylap.speech.Saying;

/** The strip under the sill whose lower edge the follow-on trade needs free. */
public sealed interface Apron {
    record Absent() implements Apron {}

    /** A layer can still be slid under it. */
    record LowerEdgeFree(Plane drainsTo) implements Apron {}

    /** Tucked under and secured, or bonded down from the first. */
    record Held(Plane drainsTo) implements Apron {}

    /** Where the water goes that the apron sheds; an opening drains to one of them only. */
    enum Plane {
        FIRST_BARRIER("outer face of the first barrier"),
        SECOND_BARRIER("outer face of the second barrier"),
        BETWEEN_BARRIERS("between the first and the second barrier");

        private final String words;

        Plane(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public static Plane of(SecondLayer secondLayer) {
            return switch (secondLayer) {
                case NONE -> FIRST_BARRIER;
                case TUCK -> SECOND_BARRIER;
                case DRAIN_BETWEEN -> BETWEEN_BARRIERS;
            };
        }
    }

    default Saying saying() {
        return switch (this) {
            case Absent _ -> Saying.of("no apron yet");
            case LowerEdgeFree(var plane) ->
                Saying.of("apron on, lower edge free; will drain: {0}", Saying.of(plane.words()));
            case Held(var plane) -> Saying.of("apron on, lower edge held; drains: {0}", Saying.of(plane.words()));
        };
    }

    default String words() {
        return saying().words();
    }
}
