package drylap.load;

import java.time.Duration;

/**
 * What the trial is asked for.
 *
 * @param schedulers with the week sheet open
 * @param crews that mark lines
 * @param followOn people who take openings over
 */
record LoadWish(Duration time, int openings, int schedulers, int crews, int followOn) {
    private static final int MOST_MINUTES = 24 * 60;
    private static final int USUAL_MINUTES = 10;
    private static final int USUAL_OPENINGS = 3_000;
    private static final int USUAL_SCHEDULERS = 60;
    private static final int USUAL_CREWS = 100;
    private static final int USUAL_FOLLOW_ON = 40;
    private static final String ACCEPTED = "accepted: --minutes N, and --tenth for a tenth of people and openings";

    /** @throws IllegalArgumentException with what would be accepted */
    static LoadWish of(String... words) {
        int minutes = USUAL_MINUTES;
        int part = 1;
        for (int i = 0; i < words.length; i++) {
            switch (words[i]) {
                case "--minutes" -> minutes = minutes(++i < words.length ? words[i] : "");
                case "--tenth" -> part = 10;
                default -> throw new IllegalArgumentException("%s is not known; %s".formatted(words[i], ACCEPTED));
            }
        }
        return new LoadWish(
                Duration.ofMinutes(minutes),
                USUAL_OPENINGS / part,
                USUAL_SCHEDULERS / part,
                USUAL_CREWS / part,
                USUAL_FOLLOW_ON / part);
    }

    private static int minutes(String text) {
        if (text.matches("[1-9]\\d{0,3}") && Integer.parseInt(text) <= MOST_MINUTES) return Integer.parseInt(text);
        throw new IllegalArgumentException(
                "--minutes: %s; accepted: a whole number from 1 to %d".formatted(text, MOST_MINUTES));
    }

    int people() {
        return schedulers + crews + followOn;
    }
}
