package drylap.ui.drawn;

import drylap.forecasts.FetchState;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.KeptForecast;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a site's forecast comes from, in words.
 *
 * @param planned what the next plan goes by, with its source and when it was made
 * @param fetched how the last fetch ended and when the next is due; blank where nothing is fetched
 * @param remarks what to know of the forecast in use
 * @param source chosen; null where it is the job folder's own
 * @param waits whether the source asked not to be asked yet
 */
public record SiteForecast(
        String planned,
        String fetched,
        List<String> remarks,
        @Nullable ForecastSource source,
        boolean waits) {
    /** What is known at one site. */
    public record Facts(
            Site site,
            ForecastChoice choice,
            Optional<KeptForecast> inUse,
            Optional<FetchState> state,
            Forecast forecast) {}

    public static SiteForecast of(Facts facts, Instant now) {
        ZoneId zone = facts.site().zone();
        return new SiteForecast(
                planned(facts, zone, now),
                facts.choice().source() == null
                        ? ""
                        : facts.state().map(state -> fetched(state, zone, now)).orElse(""),
                facts.inUse().map(used -> used.read().remarks()).orElse(List.of()),
                facts.choice().source(),
                facts.state().map(FetchState::notBefore).filter(now::isBefore).isPresent());
    }

    private static String planned(Facts facts, ZoneId zone, Instant now) {
        String by = facts.inUse()
                .map(used -> "%s, %s, fetched %s"
                        .formatted(used.source().words(), made(used, zone), Words.moment(used.fetchedAt(), zone)))
                .orElse("the job folder's own");
        Instant end = facts.forecast().end();
        if (!end.isAfter(now))
            return "No forecast from now on (%s): hours are marked beyond the forecast and count as open."
                    .formatted(by);
        return "Planned by: %s; it reaches to %s.".formatted(by, Words.moment(end, zone));
    }

    private static String made(KeptForecast used, ZoneId zone) {
        Instant issued = used.read().issuedAt();
        return issued == null ? "no time of issue told" : "issued " + Words.moment(issued, zone);
    }

    private static String fetched(FetchState state, ZoneId zone, Instant now) {
        Instant tried = state.triedAt();
        if (tried == null || state.outcome() == null) return "Not fetched yet; the first fetch is on its way.";
        Instant until = state.notBefore();
        return "Last fetch %s: %s (%s). %s"
                .formatted(
                        Words.moment(tried, zone),
                        state.outcome().words(),
                        state.words(),
                        until != null && now.isBefore(until)
                                ? "The source asked not to be asked before %s.".formatted(Words.moment(until, zone))
                                : "Next one due %s.".formatted(Words.moment(state.dueAt(), zone)));
    }
}
