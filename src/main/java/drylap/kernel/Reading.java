package drylap.kernel;

/** How someone reads: in which language, and lengths by which ruler. */
public record Reading(Language language, Ruler ruler) {
    /** For whoever has chosen nothing. */
    public static final Reading USUAL = new Reading(Language.ENGLISH, Ruler.MILLIMETRES);

    public Reading in(Language other) {
        return new Reading(other, ruler);
    }

    public Reading by(Ruler other) {
        return new Reading(language, other);
    }
}
