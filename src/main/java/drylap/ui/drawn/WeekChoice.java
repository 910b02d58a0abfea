package drylap.ui.drawn;

import drylap.crews.Crew;
import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Site;
import drylap.speech.Speech;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What of a week sheet someone wants to see: of one site, one trade, one crew, or of all of them. */
public record WeekChoice(
        @Nullable SiteId site,
        @Nullable Trade trade,
        @Nullable CrewId crew) {
    public static final WeekChoice ALL = new WeekChoice(null, null, null);

    private static final String SITE = "site";
    private static final String TRADE = "trade";
    private static final String CREW = "crew";

    /** As it stands in an address; words that are none of ours are passed over. */
    public static WeekChoice of(Map<String, List<String>> parameters) {
        return new WeekChoice(
                first(parameters, SITE).map(SiteId::new).orElse(null),
                first(parameters, TRADE)
                        .flatMap(code -> Coded.parse(Trade.class, code))
                        .orElse(null),
                first(parameters, CREW).map(CrewId::new).orElse(null));
    }

    private static Optional<String> first(Map<String, List<String>> parameters, String name) {
        return parameters.getOrDefault(name, List.of()).stream()
                .filter(value -> !value.isBlank())
                .findFirst();
    }

    public Map<String, String> parameters() {
        Map<String, String> parameters = new LinkedHashMap<>();
        if (site != null) parameters.put(SITE, site.value());
        if (trade != null) parameters.put(TRADE, trade.code());
        if (crew != null) parameters.put(CREW, crew.value());
        return parameters;
    }

    /** Without what the folder does not have: another folder may lie on the table by now. */
    public WeekChoice within(FolderShown shown) {
        boolean siteThere =
                shown.folder().sites().stream().anyMatch(one -> one.id().equals(site));
        boolean crewThere =
                shown.folder().crews().stream().anyMatch(one -> one.id().equals(crew));
        return new WeekChoice(siteThere ? site : null, trade, crewThere ? crew : null);
    }

    public boolean all() {
        return equals(ALL);
    }

    boolean admits(Site one) {
        return site == null || site.equals(one.id());
    }

    boolean admits(Visit visit) {
        return site == null || site.equals(visit.facade().site());
    }

    /** Both the visit and its crew. */
    public boolean shows(FolderShown shown, Visit visit) {
        return admits(visit) && crews(shown).stream().anyMatch(one -> one.id().equals(visit.crew()));
    }

    /** Of a site: those crews that the plan sends there. */
    List<Crew> crews(FolderShown shown) {
        Set<CrewId> sent =
                visits(shown).stream().filter(this::admits).map(Visit::crew).collect(Collectors.toSet());
        return shown.folder().crews().stream()
                .filter(one -> trade == null || trade == one.trade())
                .filter(one -> crew == null || crew.equals(one.id()))
                .filter(one -> site == null || sent.contains(one.id()))
                .toList();
    }

    /** How much of it is shown, and how much is left out. */
    public String words(Speech say, FolderShown shown) {
        Set<CrewId> crews = crews(shown).stream().map(Crew::id).collect(Collectors.toSet());
        List<Visit> visits = visits(shown);
        long seen = visits.stream()
                .filter(visit -> admits(visit) && crews.contains(visit.crew()))
                .count();
        return say.it(
                all()
                        ? "{0} of {1} visits, {2} of {3} crews"
                        : "{0} of {1} visits, {2} of {3} crews; the others are filtered out",
                seen,
                visits.size(),
                crews.size(),
                shown.folder().crews().size());
    }

    private static List<Visit> visits(FolderShown shown) {
        return shown.plan().map(Plan::visits).orElse(List.of());
    }
}
