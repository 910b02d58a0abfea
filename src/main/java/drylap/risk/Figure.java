package drylap.risk;

/** A figure from trials with its standard error: another seed would give another figure, about so far off. */
public record Figure(double value, double error) {
    static Figure chance(int hits, int trials) {
        double p = (double) hits / trials;
        return new Figure(p, Math.sqrt(p * (1 - p) / trials));
    }

    static Figure mean(int[] values) {
        double sum = 0;
        for (int value : values) sum += value;
        double mean = sum / values.length;
        double squares = 0;
        for (int value : values) squares += (value - mean) * (value - mean);
        return new Figure(mean, Math.sqrt(squares / Math.max(1, values.length - 1) / values.length));
    }
}
