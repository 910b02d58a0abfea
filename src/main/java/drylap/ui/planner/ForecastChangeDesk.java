package drylap.ui.planner;

import drylap.forecasts.KeptForecast;
import drylap.forecasts.KeptForecasts;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanForecast;
import drylap.planning.PlanForecasts;
import drylap.planning.PlanRuns;
import drylap.planning.Visit;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ForecastChange;
import drylap.ui.drawn.ForecastName;
import drylap.weather.Forecast;
import drylap.weather.ForecastOrigin;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The forecasts that are known of a site, and what one of them changes against another. */
@Service
final class ForecastChangeDesk {
    private static final int MOST_KNOWN = 30;

    private final KeptForecasts kept;
    private final PlanForecasts planned;
    private final JobFolders folders;
    private final PlanRuns runs;
    private final Clock clock;

    ForecastChangeDesk(KeptForecasts kept, PlanForecasts planned, JobFolders folders, PlanRuns runs, Clock clock) {
        this.kept = kept;
        this.planned = planned;
        this.folders = folders;
        this.runs = runs;
        this.clock = clock;
    }

    /** Newest first, the job folder's own last; each says where it is planned by. */
    List<ForecastName> known(Speech say, Person who, FolderShown shown, Site site) {
        List<ForecastName> names = new ArrayList<>();
        Long now = inUse(shown, site.id());
        Optional<PlanForecast> published = published(who, shown, site.id());
        for (KeptForecast one : kept.newest(who, site.id(), MOST_KNOWN))
            if (one.place().equals(site.place()))
                names.add(ForecastName.of(say, one.origin(), site, marks(say, one.id(), now, published)));
        if (!own(who, shown, site).hours().isEmpty())
            names.add(ForecastName.own(say, marks(say, null, now, published)));
        return names;
    }

    private static List<String> marks(
            Speech say, @Nullable Long id, @Nullable Long now, Optional<PlanForecast> published) {
        List<String> marks = new ArrayList<>();
        if (Objects.equals(id, now)) marks.add(say.it("in use now"));
        if (published.filter(one -> Objects.equals(id, kept(one.origin()))).isPresent())
            marks.add(say.it("the published plan went by it"));
        return marks;
    }

    /** The one that the published plan went by, unless that is still in use; else the one before the one in use. */
    Optional<ForecastName> earlier(Person who, FolderShown shown, Site site, List<ForecastName> known) {
        Long now = inUse(shown, site.id());
        return published(who, shown, site.id())
                .filter(one -> !Objects.equals(kept(one.origin()), now))
                .flatMap(by -> known.stream()
                        .filter(one -> Objects.equals(one.kept(), kept(by.origin())))
                        .findFirst())
                .or(() -> known.stream().skip(1 + place(known, now)).findFirst())
                .or(() -> known.stream().findFirst());
    }

    Optional<ForecastName> later(FolderShown shown, Site site, List<ForecastName> known) {
        Long now = inUse(shown, site.id());
        return known.stream().skip(place(known, now)).findFirst();
    }

    private static int place(List<ForecastName> known, @Nullable Long now) {
        for (int i = 0; i < known.size(); i++) if (Objects.equals(known.get(i).kept(), now)) return i;
        return 0;
    }

    ForecastChange change(
            Speech say, Person who, FolderShown shown, Site site, ForecastName earlier, ForecastName later) {
        who.demand(Operation.SEE_WEEK_SHEET, site.id());
        List<Visit> published =
                Optional.ofNullable(shown.choice().published()).map(Plan::visits).orElse(List.of()).stream()
                        .filter(visit -> visit.facade().site().equals(site.id()))
                        .toList();
        return ForecastChange.of(
                say,
                new ForecastChange.Asked(
                        shown, site, forecast(who, shown, site, earlier), forecast(who, shown, site, later), published),
                clock.instant());
    }

    boolean mayPlan(Person who, FolderShown shown) {
        return runs.mayPropose(who, shown.stored().id());
    }

    private Forecast forecast(Person who, FolderShown shown, Site site, ForecastName name) {
        Long id = name.kept();
        return id == null ? own(who, shown, site) : kept.told(who, site, id).orElseGet(() -> Forecast.none(site.id()));
    }

    private Forecast own(Person who, FolderShown shown, Site site) {
        who.demand(Operation.SEE_OPEN_HOURS, site.id());
        return folders.load(shown.stored().id()).forecast(site.id());
    }

    private Optional<PlanForecast> published(Person who, FolderShown shown, SiteId site) {
        return Optional.ofNullable(shown.choice().publication())
                .flatMap(one -> planned.of(who, one.plan()).stream()
                        .filter(by -> by.site().equals(site))
                        .findFirst());
    }

    private static @Nullable Long inUse(FolderShown shown, SiteId site) {
        return kept(shown.folder().forecast(site).origin());
    }

    private static @Nullable Long kept(@Nullable ForecastOrigin origin) {
        return origin == null ? null : origin.kept();
    }
}
