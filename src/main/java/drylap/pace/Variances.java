package drylap.pace;

/** How far logarithms of durations spread: between methods, between crews, between the two with a size, and from install to install. */
record Variances(double method, double crew, double cell, double noise) {
    /**
     * What is believed before the log says anything, and how many installs or groups that belief is worth; planning choice of
     * this project: methods and crews differ by a tenth or so, two installs alike by a fifth.
     */
    static final Variances BELIEVED = new Variances(0.01, 0.0144, 0.0036, 0.04);

    static final double WORTH = 4;

    /** A sum of squares over so many, drawn to what is believed. */
    static double drawn(double squares, double count, double believed) {
        return (squares + WORTH * believed) / (count + WORTH);
    }

    boolean near(Variances other) {
        return near(method, other.method)
                && near(crew, other.crew)
                && near(cell, other.cell)
                && near(noise, other.noise);
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < 1e-6 * Math.max(one, other);
    }
}
