package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.planning.Plan;
import drylap.planning.PlanForecast;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.weather.ForecastOrigin;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * By which forecasts the plan that is looked at was made, and what it knew nothing of.
 *
 * @param lines sites of the same forecast in one
 * @param changed sites that another forecast has come for since
 */
public record PlannedWith(List<String> lines, List<Changed> changed) {
    /** Where in a line the names of its sites come. */
    private static final String SITES = "\u0000";

    public static final PlannedWith NOTHING = new PlannedWith(List.of(), List.of());

    /** @param words its name, and which forecast it goes by now */
    public record Changed(SiteId site, String words) {}

    public static PlannedWith of(Speech say, FolderShown shown, List<PlanForecast> by) {
        Plan plan = shown.plan().orElse(null);
        if (plan == null || by.isEmpty()) return NOTHING;
        Map<SiteId, Site> sites = shown.folder().sites().stream().collect(Collectors.toMap(Site::id, site -> site));
        List<PlanForecast> known =
                by.stream().filter(one -> sites.containsKey(one.site())).toList();
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (PlanForecast one : known) {
            Site site = Objects.requireNonNull(sites.get(one.site()));
            lines.computeIfAbsent(told(say, one, site.zone()), _ -> new ArrayList<>())
                    .add(site.name());
        }
        for (PlanForecast one : known) {
            Site site = Objects.requireNonNull(sites.get(one.site()));
            if (endsEarly(one, plan))
                lines.computeIfAbsent(ended(say, one, site.zone()), _ -> new ArrayList<>())
                        .add(site.name());
        }
        return new PlannedWith(
                lines.entrySet().stream()
                        .map(line -> line.getKey().replace(SITES, String.join(", ", line.getValue())))
                        .toList(),
                known.stream()
                        .filter(one -> !Objects.equals(kept(one.origin()), kept(now(shown, one.site()))))
                        .map(one -> changed(say, shown, Objects.requireNonNull(sites.get(one.site()))))
                        .toList());
    }

    private static String told(Speech say, PlanForecast one, ZoneId zone) {
        if (one.toldUntil() == null) return say.it("No forecast: {0}. All hours there were counted as open.", SITES);
        return say.it("Planned with {0}: {1}.", named(say, one.origin(), zone), SITES);
    }

    private static String named(Speech say, @Nullable ForecastOrigin origin, ZoneId zone) {
        return origin == null ? say.it("the job folder\u2019s own forecast") : name(say, origin, zone);
    }

    private static boolean endsEarly(PlanForecast one, Plan plan) {
        return one.toldUntil() != null && one.toldUntil().isBefore(plan.horizonEnd());
    }

    private static String ended(Speech say, PlanForecast one, ZoneId zone) {
        return say.it(
                "The forecast ends {0}: {1}. Hours after it were counted as open.",
                say.moment(Objects.requireNonNull(one.toldUntil()), zone), SITES);
    }

    private static Changed changed(Speech say, FolderShown shown, Site site) {
        ForecastOrigin now = now(shown, site.id());
        return new Changed(site.id(), "%s: %s".formatted(site.name(), named(say, now, site.zone())));
    }

    /** Such as "MET Norway, Locationforecast of Wed 25 Nov 06:00". */
    static String name(Speech say, ForecastOrigin origin, ZoneId zone) {
        Instant issued = origin.issuedAt();
        return issued == null
                ? say.it("{0}, fetched {1}", say.it(origin.source()), say.moment(origin.fetchedAt(), zone))
                : say.it("{0} of {1}", say.it(origin.source()), say.moment(issued, zone));
    }

    private static @Nullable ForecastOrigin now(FolderShown shown, SiteId site) {
        return shown.folder().forecast(site).origin();
    }

    private static @Nullable Long kept(@Nullable ForecastOrigin origin) {
        return origin == null ? null : origin.kept();
    }
}
