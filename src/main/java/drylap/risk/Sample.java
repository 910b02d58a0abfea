package drylap.risk;

/** Values of which the mean and its error are wanted, by Welford's running sums. */
final class Sample {
    private int count;
    private double mean;
    private double squares;

    void add(double value) {
        count++;
        double off = value - mean;
        mean += off / count;
        squares += off * (value - mean);
    }

    int count() {
        return count;
    }

    /** The difference of the means. */
    Figure minus(Sample other) {
        return new Figure(mean - other.mean, Math.sqrt(errorSquared() + other.errorSquared()));
    }

    private double errorSquared() {
        return squares / (count - 1) / count;
    }
}
