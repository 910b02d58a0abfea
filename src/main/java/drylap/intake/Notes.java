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

    /** @param end of the forecast, where it has one */
    private record Lack(FolderWords words, String end) {
        String of(String sites) {
            return words.with(sites, end);
        }
    }

    private Notes() {}

    static List<String> of(JobFolder folder, Set<String> ignored) {
        List<String> notes = new ArrayList<>();
        for (String file : ignored) notes.add(FolderWords.IGNORED.with(file));
        Instant last = folder.lastLimit().orElseThrow();
        Map<Lack, List<Site>> sitesByNote = new LinkedHashMap<>();
        for (int i = 0; i < folder.sites().size(); i++) {
            Site site = folder.sites().get(i);
            Lack lack = lack(site, folder.forecasts().get(i), last);
            if (lack != null)
                sitesByNote.computeIfAbsent(lack, _ -> new ArrayList<>()).add(site);
        }
        sitesByNote.forEach((lack, sites) -> notes.add(lack.of(named(sites))));
        return notes;
    }

    /** What the forecast of a site does not reach. */
    private static @Nullable Lack lack(Site site, Forecast forecast, Instant lastShift) {
        if (forecast.hours().isEmpty()) return new Lack(FolderWords.NO_FORECAST, "");
        if (!forecast.end().isBefore(lastShift)) return null;
        return new Lack(FolderWords.FORECAST_ENDS, String.valueOf(Lines.time(forecast.end(), site.zone())));
    }

    private static String named(List<Site> sites) {
        if (sites.size() == 1) return FolderWords.ONE_SITE.with(sites.getFirst().id());
        String few = sites.stream().limit(FEW).map(site -> site.id().value()).collect(Collectors.joining(", "));
        return sites.size() <= FEW ? FolderWords.SITES.with(few) : FolderWords.MANY_SITES.with(sites.size(), few);
    }
}
