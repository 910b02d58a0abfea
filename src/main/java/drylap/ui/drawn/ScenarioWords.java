package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.speech.Speech;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;
import drylap.whatif.DropDay;
import drylap.whatif.OtherForecast;
import drylap.whatif.OtherRain;
import drylap.whatif.RainByPercent;
import java.util.Objects;
import java.util.stream.Collectors;

/** What would be otherwise in a scenario, in a sentence each. */
public final class ScenarioWords {
    private ScenarioWords() {}

    public static String of(Speech say, FolderShown shown, Change change) {
        return switch (change) {
            case AddCrew(var crew, var like, var from) ->
                say.it("crew {0} comes too, with the hours of crew {1}, from {2} on", crew, like, say.day(from));
            case DropDay(var date, var crew, var site) ->
                crew != null
                        ? say.it("crew {0} does not come on {1}", crew, say.day(date))
                        : say.it(
                                "no crew of {0} comes on {1}",
                                name(shown, Objects.requireNonNull(site)), say.day(date));
            case DelayDelivery(var facade, var opening, var days) ->
                opening != null
                        ? say.it("the window of {0} comes {1, plural, one {# day} other {# days}} later", opening, days)
                        : say.it(
                                "the windows of {0} come {1, plural, one {# day} other {# days}} later",
                                shown.title(Objects.requireNonNull(facade)), days);
            case OtherRain(var site, var when, var rains) ->
                say.it(
                        rains ? "rain for certain at {0}, {1} to {2}" : "no rain at {0}, {1} to {2}",
                        name(shown, site),
                        say.moment(when.from(), shown.site(site).zone()),
                        say.moment(when.until(), shown.site(site).zone()));
            case RainByPercent(var percent) ->
                say.it(
                        percent < 0 ? "every hour's rain is {0} % less" : "every hour's rain is {0} % more",
                        RuleSheet.plain(Math.abs(percent)));
            case OtherForecast(var forecasts) ->
                say.it(
                        "another forecast, for {0}",
                        forecasts.stream().map(one -> name(shown, one.site())).collect(Collectors.joining(", ")));
        };
    }

    private static String name(FolderShown shown, SiteId site) {
        return shown.site(site).name();
    }
}
