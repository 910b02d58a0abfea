package drylap.season;

/** A figure over drawn years with its standard error: another seed would give another figure, about so far off. */
public record Estimate(double value, double error) {
    static Estimate of(double[] values) {
        double sum = 0;
        for (double value : values) sum += value;
        double mean = sum / values.length;
        double squares = 0;
        for (double value : values) squares += (value - mean) * (value - mean);
        return new Estimate(mean, Math.sqrt(squares / Math.max(1, values.length - 1) / values.length));
    }
}
