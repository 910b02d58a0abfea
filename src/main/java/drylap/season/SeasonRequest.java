package drylap.season;

import drylap.climate.MonthlyNormals;
import drylap.kernel.Trade;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What a season's outlook is told beside the job folder.
 *
 * @param from what is still to do begins then
 * @param normals what months bring beyond the forecast; none: taken from the forecasts that there are, or assumed
 * @param crews how many of a trade work at the site; of a trade that is not named, the site's share of those that the folder has
 */
public record SeasonRequest(
        Instant from, List<MonthlyNormals> normals, Map<Trade, Integer> crews, int years, long seed) {
    public static final int USUAL_YEARS = 500;
    public static final int FEWEST_YEARS = 50;
    public static final int MOST_YEARS = 10_000;
    public static final int MOST_CREWS = 100;

    public SeasonRequest {
        normals = List.copyOf(normals);
        crews = Map.copyOf(crews);
        if (years < FEWEST_YEARS || years > MOST_YEARS)
            throw new IllegalArgumentException(
                    "%d years; accepted: %d to %d".formatted(years, FEWEST_YEARS, MOST_YEARS));
        crews.forEach((trade, count) -> {
            if (count < 0 || count > MOST_CREWS)
                throw new IllegalArgumentException(
                        "%d crews of trade %s; accepted: 0 to %d".formatted(count, trade.code(), MOST_CREWS));
        });
    }

    public SeasonRequest(Instant from, List<MonthlyNormals> normals) {
        this(from, normals, Map.of(), USUAL_YEARS, 1);
    }
}
