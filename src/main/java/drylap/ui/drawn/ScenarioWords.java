package drylap.ui.drawn;

import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;
import drylap.whatif.DropDay;
import drylap.whatif.OtherForecast;
import drylap.whatif.OtherRain;
import drylap.whatif.RainByPercent;
import drylap.whatif.Scenario;
import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What would be otherwise in a scenario, in a sentence each. */
public final class ScenarioWords {
    private ScenarioWords() {}

    public static String all(FolderShown shown, Scenario scenario) {
        return scenario.changes().stream().map(change -> of(shown, change)).collect(Collectors.joining("; "));
    }

    public static String of(FolderShown shown, Change change) {
        return switch (change) {
            case AddCrew(var crew, var like, var from) ->
                "crew %s comes too, with the hours of crew %s, from %s on".formatted(crew, like, day(from));
            case DropDay(var date, var crew, var site) ->
                crew != null
                        ? "crew %s does not come on %s".formatted(crew, day(date))
                        : "no crew of %s comes on %s".formatted(name(shown, Objects.requireNonNull(site)), day(date));
            case DelayDelivery(var facade, var opening, var days) ->
                "%s %s later".formatted(late(shown, facade, opening), days == 1 ? "1 day" : days + " days");
            case OtherRain(var site, var when, var rains) ->
                "%s at %s, %s"
                        .formatted(rains ? "rain for certain" : "no rain", name(shown, site), hours(shown, site, when));
            case RainByPercent(var percent) -> percent(percent);
            case OtherForecast(var forecasts) ->
                "another forecast, for %s"
                        .formatted(forecasts.stream()
                                .map(one -> name(shown, one.site()))
                                .collect(Collectors.joining(", ")));
        };
    }

    private static String late(FolderShown shown, @Nullable FacadeId facade, @Nullable OpeningId opening) {
        return opening != null
                ? "the window of %s comes".formatted(opening)
                : "the windows of %s come".formatted(shown.title(Objects.requireNonNull(facade)));
    }

    private static String hours(FolderShown shown, SiteId site, TimeWindow when) {
        var zone = shown.site(site).zone();
        return "%s to %s".formatted(Words.moment(when.from(), zone), Words.moment(when.until(), zone));
    }

    private static String percent(double percent) {
        return "every hour's rain is %s %% %s"
                .formatted(RuleSheet.plain(Math.abs(percent)), percent < 0 ? "less" : "more");
    }

    private static String name(FolderShown shown, SiteId site) {
        return shown.site(site).name();
    }

    private static String day(LocalDate date) {
        return "%s %s".formatted(Words.weekday(date), Words.date(date));
    }
}
