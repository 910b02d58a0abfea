package drylap.ui.drawn;

import drylap.forecasts.FetchState;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.ForecastWords;
import drylap.forecasts.KeptForecast;
import drylap.forecasts.LastingRain;
import drylap.kernel.Rule;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
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
 * @param lasting how rain lasts by what the source tells, and by what the plan counts with
 */
public record SiteForecast(
        String planned,
        String fetched,
        List<String> remarks,
        @Nullable ForecastSource source,
        boolean waits,
        Lasting lasting) {
    /**
     * How rain lasts here.
     *
     * @param offered what the plan could count with instead; null where there is nothing to take over
     * @param whence from what that was solved
     */
    public record Lasting(String words, @Nullable Double offered, String whence) {}

    /**
     * What is known at one site.
     *
     * @param persistence what the plan counts with
     */
    public record Facts(
            Site site,
            ForecastChoice choice,
            Optional<KeptForecast> inUse,
            Optional<FetchState> state,
            Forecast forecast,
            LastingRain lasting,
            double persistence) {}

    public static SiteForecast of(Speech say, Facts facts, Instant now) {
        ZoneId zone = facts.site().zone();
        return new SiteForecast(
                planned(say, facts, zone, now),
                facts.choice().source() == null
                        ? ""
                        : facts.state()
                                .map(state -> fetched(say, state, zone, now))
                                .orElse(""),
                facts.inUse().map(used -> used.read().remarks()).orElse(List.of()).stream()
                        .map(ForecastWords::read)
                        .map(say::it)
                        .toList(),
                facts.choice().source(),
                facts.state().map(FetchState::notBefore).filter(now::isBefore).isPresent(),
                lasting(say, facts.lasting(), facts.persistence()));
    }

    private static Lasting lasting(Speech say, LastingRain lasting, double persistence) {
        String counted = RuleSheet.plain(persistence);
        return switch (lasting) {
            case LastingRain.Unsolved(var why) ->
                new Lasting(
                        say.it("How rain lasts here is not known ({0}); the plan counts with {1}.", why, counted),
                        null,
                        "");
            case LastingRain.Solved solved -> {
                double rounded = solved.rounded(Rule.RAIN_PERSISTENCE.most());
                yield new Lasting(
                        say.it(
                                "Rain lasts here: one hour's rain goes with the next by {0}; the plan counts with {1}.",
                                solved.said(), counted),
                        Math.abs(rounded - persistence) < 0.005 ? null : rounded,
                        solved.whence().words());
            }
        };
    }

    private static String planned(Speech say, Facts facts, ZoneId zone, Instant now) {
        String by = facts.inUse()
                .map(used -> say.it(
                        used.source().fetched() ? "{0}, {1}, fetched {2}" : "{0}, {1}, on {2}",
                        Saying.of(used.source().words()),
                        made(say, used, zone),
                        say.moment(used.fetchedAt(), zone)))
                .orElseGet(() -> say.it("the job folder's own"));
        Instant end = facts.forecast().end();
        if (!end.isAfter(now))
            return say.it("No forecast from now on ({0}): hours are marked beyond the forecast and count as open.", by);
        return say.it("Planned by: {0}; it reaches to {1}.", by, say.moment(end, zone));
    }

    private static String made(Speech say, KeptForecast used, ZoneId zone) {
        Instant issued = used.read().issuedAt();
        return issued == null ? say.it("no time of issue told") : say.it("issued {0}", say.moment(issued, zone));
    }

    private static String fetched(Speech say, FetchState state, ZoneId zone, Instant now) {
        Instant tried = state.triedAt();
        if (tried == null || state.outcome() == null) return say.it("Not fetched yet; the first fetch is on its way.");
        Instant until = state.notBefore();
        return say.it(
                "Last fetch {0}: {1} ({2}). {3}",
                say.moment(tried, zone),
                Saying.of(state.outcome().words()),
                ForecastWords.read(state.words()),
                until != null && now.isBefore(until)
                        ? say.it("The source asked not to be asked before {0}.", say.moment(until, zone))
                        : say.it("Next one due {0}.", say.moment(state.dueAt(), zone)));
    }
}
