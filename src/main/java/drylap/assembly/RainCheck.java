package drylap.assembly;

import java.util.Comparator;
import java.util.List;

/**
 * The rain rating of an opening with what speaks against a better one. Safe by laps means: no path to the inside, no vertical
 * lap missing or reversed, no upper edge of a flashing exposed, no flap up. An exposed edge that is bonded and skinned leaves
 * it fit for light rain; what a cover over the head can close leaves it fit for a cover; anything else is open.
 * Deduced by this project from the laps; no published scale is known.
 */
public record RainCheck(RainRating rating, List<Weakness> weaknesses) {
    public static RainCheck of(AsBuilt built) {
        var weaknesses = Weakness.of(built);
        var rating = weaknesses.stream()
                .map(Weakness::atBest)
                .min(Comparator.naturalOrder())
                .orElse(built.hole() ? RainRating.OPEN : RainRating.RAIN_SAFE);
        return new RainCheck(rating, weaknesses);
    }
}
