package drylap.ui.drawn;

import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.weather.ForecastOrigin;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One of the forecasts that are known of a site, to choose by.
 *
 * @param kept its number; null for the job folder's own
 */
public record ForecastName(@Nullable Long kept, String words) {
    public static ForecastName of(Speech say, ForecastOrigin origin, Site site, List<String> marks) {
        return new ForecastName(origin.kept(), marked(PlannedWith.name(say, origin, site.zone()), marks));
    }

    public static ForecastName own(Speech say, List<String> marks) {
        return new ForecastName(null, marked(say.it("The job folder\u2019s own forecast"), marks));
    }

    private static String marked(String name, List<String> marks) {
        return marks.isEmpty() ? name : "%s (%s)".formatted(name, String.join("; ", marks));
    }
}
