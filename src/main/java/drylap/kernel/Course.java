package drylap.kernel;

import java.util.Comparator;

/** The row of openings of one facade and level; level 1 is the lowest. */
public record Course(FacadeId facade, int level) implements Comparable<Course> {
    private static final Comparator<Course> ORDER =
            Comparator.comparing(Course::facade).thenComparingInt(Course::level);

    @Override
    public int compareTo(Course other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return facade + " level " + level;
    }
}
