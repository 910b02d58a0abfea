package drylap.intake;

import drylap.crews.Shift;
import drylap.intake.csv.Lines;
import drylap.planning.JobFolder;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a person should know about a folder in which nothing is wrong. */
final class Notes {
    private Notes() {}

    static List<String> of(JobFolder folder, Set<String> ignored) {
        List<String> notes = new ArrayList<>();
        for (String file : ignored) notes.add("%s is not a file of a job folder and was ignored".formatted(file));
        Instant last = folder.shifts().stream()
                .map(Shift::limit)
                .max(Instant::compareTo)
                .orElseThrow();
        for (int i = 0; i < folder.sites().size(); i++)
            forecast(folder.sites().get(i), folder.forecasts().get(i), last, notes);
        return notes;
    }

    private static void forecast(Site site, Forecast forecast, Instant lastShift, List<String> notes) {
        if (forecast.hours().isEmpty())
            notes.add("site %s has no forecast: every hour is marked beyond the forecast".formatted(site.id()));
        else if (forecast.end().isBefore(lastShift))
            notes.add(
                    "the forecast of site %s ends at %s, before the last shift: later hours are marked beyond the forecast"
                            .formatted(site.id(), Lines.time(forecast.end(), site.zone())));
    }
}
