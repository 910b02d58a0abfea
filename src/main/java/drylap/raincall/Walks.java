package drylap.raincall;

import java.util.Arrays;

/** Minutes of walking and setting up before work at an opening, by where the crew comes from. */
public final class Walks {
    private final int[] first;
    private final int[][] between;

    private Walks(int[] first, int[][] between) {
        this.first = first;
        this.between = between;
    }

    /**
     * @param first to each opening from where the crew is now
     * @param between from the first index to the second
     */
    public static Walks of(int[] first, int[][] between) {
        if (between.length != first.length || Arrays.stream(between).anyMatch(row -> row.length != first.length))
            throw new IllegalArgumentException(
                    "walks of %d openings need as many rows and columns".formatted(first.length));
        return new Walks(first.clone(), Arrays.stream(between).map(int[]::clone).toArray(int[][]::new));
    }

    public static Walks none(int openings) {
        return new Walks(new int[openings], new int[openings][openings]);
    }

    int openings() {
        return first.length;
    }

    /** @param from below 0 where the crew starts */
    int minutes(int from, int to) {
        return from < 0 ? first[to] : between[from][to];
    }

    int least(int to) {
        int least = first[to];
        for (int from = 0; from < first.length; from++) if (from != to) least = Math.min(least, between[from][to]);
        return least;
    }

    /** Every way on is as long from the one as from the other. */
    boolean alike(int one, int other) {
        return Arrays.equals(between[one], between[other]);
    }
}
