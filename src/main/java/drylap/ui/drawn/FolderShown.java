package drylap.ui.drawn;

import drylap.crews.Shift;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.StoredFolder;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.weather.Forecast;
import drylap.weather.SiteWeather;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The job folder on the table as it stands by now, the plan that is looked at where there is one, and the weather of its sites over its days. */
public final class FolderShown {
    private final StoredFolder stored;
    private final JobFolder folder;
    private final PlanChoice choice;
    private final Map<SiteId, Site> sites;
    private final Map<FacadeId, Facade> facades;
    private final Map<OpeningId, Opening> openings;
    private final LocalDate firstDay;
    private final LocalDate lastDay;
    /** Worked out where it is asked for: a page shows few of a hundred sites. */
    private final Map<SiteId, SiteWeather> weather = new ConcurrentHashMap<>();

    private final Map<WeekAsked, DrawnWeek> weeks = new ConcurrentHashMap<>();

    private record WeekAsked(Reading reading, WeekChoice choice) {}

    public FolderShown(StoredFolder stored, JobFolder folder, PlanChoice choice) {
        this.stored = stored;
        this.folder = folder;
        this.choice = choice;
        sites = byId(folder.sites(), Site::id);
        facades = byId(folder.facades(), Facade::id);
        openings = byId(folder.openings(), Opening::id);
        var days = folder.shifts().stream().map(Shift::date).sorted().toList();
        firstDay = days.isEmpty() ? importDay() : days.getFirst();
        lastDay = days.isEmpty() ? firstDay : days.getLast();
    }

    public StoredFolder stored() {
        return stored;
    }

    public JobFolder folder() {
        return folder;
    }

    /** What files about it are called after: its one site, else the folder. */
    public String name() {
        return folder.sites().size() == 1 ? folder.sites().getFirst().name() : stored.name();
    }

    public Optional<Plan> plan() {
        return choice.shown();
    }

    public PlanChoice choice() {
        return choice;
    }

    /** Drawn once, however many pages show it. */
    public DrawnWeek week(Speech say, WeekChoice chosen) {
        return weeks.computeIfAbsent(
                new WeekAsked(say.reading(), chosen), _ -> DrawnWeek.of(WeekPresenter.week(say, this, chosen)));
    }

    /**
     * Of two fetches of the same folder, this the earlier: this one where they hold the same, else the newer one, with the weather and the weeks that
     * were worked out for this one where they are still those. A mark changes neither.
     */
    public FolderShown orNewer(FolderShown newer) {
        if (stored.equals(newer.stored) && folder.equals(newer.folder) && choice.equals(newer.choice)) return this;
        if (weatherIsThatOf(newer)) {
            newer.weather.putAll(weather);
            if (workIsThatOf(newer)) newer.weeks.putAll(weeks);
        }
        return newer;
    }

    private boolean weatherIsThatOf(FolderShown newer) {
        return firstDay.equals(newer.firstDay)
                && lastDay.equals(newer.lastDay)
                && folder.rules().equals(newer.folder.rules())
                && folder.sites().equals(newer.folder.sites())
                && folder.forecasts().equals(newer.folder.forecasts());
    }

    private boolean workIsThatOf(FolderShown newer) {
        return choice.equals(newer.choice)
                && folder.crews().equals(newer.folder.crews())
                && folder.shifts().equals(newer.folder.shifts())
                && pinned(folder).equals(pinned(newer.folder))
                && bare(folder).equals(bare(newer.folder));
    }

    private static List<PublishedVisit> pinned(JobFolder folder) {
        return folder.published().stream().filter(PublishedVisit::pinned).toList();
    }

    /** Whatever was done at them. */
    private static List<Opening> bare(JobFolder folder) {
        return folder.openings().stream()
                .map(opening -> opening.standing(0, null, Set.of()))
                .toList();
    }

    public Site site(SiteId id) {
        return found(sites, id);
    }

    public Facade facade(FacadeId id) {
        return found(facades, id);
    }

    public Opening opening(OpeningId id) {
        return found(openings, id);
    }

    /** A published plan may hold what the folder no longer shows. */
    boolean has(OpeningId id) {
        return openings.containsKey(id);
    }

    public SiteWeather weather(SiteId id) {
        return weather.computeIfAbsent(id, asked -> weatherOf(site(asked)));
    }

    public String title(FacadeId id) {
        return "%s, %s".formatted(site(id.site()).name(), id.facade());
    }

    /** The first day of any shift; the import day where there is none. */
    LocalDate firstDay() {
        return firstDay;
    }

    LocalDate lastDay() {
        return lastDay;
    }

    private LocalDate importDay() {
        ZoneId zone = folder.sites().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
        return LocalDate.ofInstant(stored.importedAt(), zone);
    }

    private SiteWeather weatherOf(Site site) {
        Forecast forecast = folder.forecast(site.id());
        // a day more on either side: crews may live by another clock than the site
        TimeWindow span = new TimeWindow(
                firstDay().minusDays(1).atStartOfDay(site.zone()).toInstant(),
                lastDay().plusDays(2).atStartOfDay(site.zone()).toInstant());
        return SiteWeather.of(site, forecast, folder.rules().at(site.id()), span);
    }

    private static <K, V> Map<K, V> byId(List<V> all, Function<V, K> id) {
        return all.stream().collect(Collectors.toMap(id, v -> v, (a, _) -> a, LinkedHashMap::new));
    }

    private static <K, V> V found(Map<K, V> all, K id) {
        V one = all.get(id);
        if (one == null) throw new IllegalArgumentException("the folder has no " + id);
        return one;
    }
}
