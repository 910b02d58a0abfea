package drylap.planning.solver;

import java.util.concurrent.atomic.AtomicLong;

/** Counts scored moves, to be read from the side while a search runs. */
final class Meter {
    private final AtomicLong moves = new AtomicLong();

    void count() {
        moves.lazySet(moves.getPlain() + 1);
    }

    long moves() {
        return moves.get();
    }
}
