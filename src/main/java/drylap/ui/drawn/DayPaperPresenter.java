package drylap.ui.drawn;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import drylap.assembly.AsBuilt;
import drylap.assembly.LapSection;
import drylap.assembly.Variant;
import drylap.crews.Crew;
import drylap.handoff.HoldPoint;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.papers.DaySheet;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What a crew's day says on paper. */
public final class DayPaperPresenter {
    private final Speech say;
    private final FolderShown shown;
    private final String address;
    private final List<Visit> visits;

    private DayPaperPresenter(Speech say, FolderShown shown, String address, CrewId crew, LocalDate date) {
        this.say = say;
        this.shown = shown;
        this.address = address;
        visits = CrewDayPresenter.visits(shown, crew, date);
    }

    /**
     * @param address under which phones reach Drylap
     * @param holds the hold points of a site
     * @param load what goes into the van, a paragraph each
     */
    public static DaySheet sheet(
            Speech say,
            FolderShown shown,
            CrewId crew,
            LocalDate date,
            Instant now,
            String address,
            Function<SiteId, Set<HoldPoint>> holds,
            List<String> load) {
        var day = CrewDayPresenter.day(say, shown, crew, date, now);
        var presenter = new DayPaperPresenter(say, shown, address, crew, date);
        return new DaySheet(
                say,
                CrewWords.counted(say, day.title(), presenter.crew(crew)),
                presenter.origin(crew, now),
                presenter.places(holds),
                load,
                presenter.stops(day.stops()),
                presenter.kinds());
    }

    private Crew crew(CrewId crew) {
        return shown.folder().crews().stream()
                .filter(one -> one.id().equals(crew))
                .findFirst()
                .orElseThrow();
    }

    private String origin(CrewId crew, Instant now) {
        ZoneId zone = crew(crew).zone();
        return say.it(
                "By the plan published {0}; printed {1}. Newer plans and marks are not on this paper: the codes open what is current.",
                say.moment(shown.stored().importedAt(), zone), say.moment(now, zone));
    }

    private List<DaySheet.Place> places(Function<SiteId, Set<HoldPoint>> holds) {
        return visits.stream()
                .map(visit -> visit.facade().site())
                .distinct()
                .map(id -> place(shown.site(id), holds.apply(id)))
                .toList();
    }

    private DaySheet.Place place(Site site, Set<HoldPoint> holds) {
        return new DaySheet.Place(
                site.name(),
                site.address().lines(),
                say.it(
                        "Site {0}, at {1}, {2} (latitude, longitude)",
                        site.id(),
                        say.number(site.place().latitude(), 5),
                        say.number(site.place().longitude(), 5)),
                holds.stream()
                        .sorted()
                        .map(HoldPoint::words)
                        .map(words -> say.it(words))
                        .toList());
    }

    private List<DaySheet.Stop> stops(List<CrewDay.Stop> said) {
        List<DaySheet.Stop> stops = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) stops.add(stop(said.get(i), visits.get(i)));
        return stops;
    }

    private DaySheet.Stop stop(CrewDay.Stop said, Visit visit) {
        var facts = Stream.of(
                        "%s, %s".formatted(said.site(), said.place()),
                        "%s: %s".formatted(said.task(), said.work()),
                        said.done() ? say.it("Done by now.") : said.way())
                .filter(words -> !words.isEmpty())
                .toList();
        return new DaySheet.Stop(
                said.opening(),
                say.it("{0} to {1}", said.from(), said.until()),
                facts,
                said.whyNot().stream().map(why -> say.it("Not ready: {0}", why)).toList(),
                FrontOf.glyph(said.glyph()),
                address + StepsAddress.of(shown.stored().id(), said.opening()),
                steps(shown.opening(visit.opening()), visit.task()));
    }

    /** The lines of the crew's own trade. */
    private List<DaySheet.Step> steps(Opening opening, Task task) {
        var done = opening.workList().doneBy(opening.done());
        return opening.workList().lines().stream()
                .filter(line -> line.trade() == task.trade())
                .map(line -> new DaySheet.Step(
                        say.it(line.saying()),
                        done.contains(line.code()) || opening.finished().contains(task)))
                .toList();
    }

    private List<DaySheet.Kind> kinds() {
        Map<Variant, List<String>> kinds = visits.stream()
                .map(visit -> shown.opening(visit.opening()))
                .distinct()
                .collect(groupingBy(
                        Opening::variant,
                        LinkedHashMap::new,
                        java.util.stream.Collectors.mapping(one -> one.id().value(), toList())));
        boolean installs = visits.stream().anyMatch(visit -> visit.task() == Task.INSTALL);
        return kinds.entrySet().stream()
                .map(kind -> kind(kind.getKey(), kind.getValue(), installs))
                .toList();
    }

    private DaySheet.Kind kind(Variant variant, List<String> openings, boolean installs) {
        var built = installs
                ? AsBuilt.afterLine(
                        variant,
                        drylap.assembly.StepList.of(variant.method(), variant.approach())
                                .last())
                : AsBuilt.finished(variant);
        String words = say.it(Words.method(variant.method()));
        return new DaySheet.Kind(
                say.it(
                        installs
                                ? "{0}; {1}. As it stands when the window crew is done."
                                : "{0}; {1}. As it stands when everything is on.",
                        words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1),
                        Saying.of(Words.approach(variant.approach()))),
                openings.stream().collect(joining(", ")),
                new LapSection(built, LapSection.Layout.STACKED, LapSection.Colours.PRINT, say).svg());
    }
}
