package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.planning.JobFolder;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a person should know about a folder in which nothing is wrong. */
final class Notes {
    private static final int FEW = 4;

    private Notes() {}

    static List<String> of(JobFolder folder, Set<String> ignored) {
        List<String> notes = new ArrayList<>();
        for (String file : ignored) notes.add("%s is not a file of a job folder and was ignored".formatted(file));
        Instant last = folder.lastLimit().orElseThrow();
        Map<String, List<Site>> sitesByNote = new LinkedHashMap<>();
        for (int i = 0; i < folder.sites().size(); i++) {
            Site site = folder.sites().get(i);
            String lack = lack(site, folder.forecasts().get(i), last);
            if (lack != null)
                sitesByNote.computeIfAbsent(lack, _ -> new ArrayList<>()).add(site);
        }
        sitesByNote.forEach((lack, sites) -> notes.add(named(sites) + lack));
        return notes;
    }

    /** What the forecast of a site does not reach, in words that follow the site's name. */
    private static @Nullable String lack(Site site, Forecast forecast, Instant lastShift) {
        if (forecast.hours().isEmpty()) return ": no forecast; every hour is marked beyond the forecast";
        if (!forecast.end().isBefore(lastShift)) return null;
        return ": the forecast ends at %s, before the last shift; later hours are marked beyond the forecast"
                .formatted(Lines.time(forecast.end(), site.zone()));
    }

    private static String named(List<Site> sites) {
        if (sites.size() == 1) return "site " + sites.getFirst().id();
        String few = sites.stream().limit(FEW).map(site -> site.id().value()).collect(Collectors.joining(", "));
        return sites.size() <= FEW ? "sites " + few : "%d sites (%s, …)".formatted(sites.size(), few);
    }
}
