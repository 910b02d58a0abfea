package drylap.ui.drawn;

import static java.util.stream.Collectors.joining;

import drylap.kernel.Coded;
import drylap.kernel.Task;
import drylap.papers.WeekPlan;
import drylap.papers.WeekPlan.Band;
import drylap.papers.WeekPlan.Band.Kind;
import drylap.papers.WeekPlan.Stay;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.Week.Block;
import drylap.ui.drawn.Week.CrewDay;
import drylap.ui.drawn.Week.CrewRow;
import drylap.ui.drawn.Week.Day;
import drylap.ui.drawn.Week.Item;
import drylap.ui.drawn.Week.SiteSky;
import drylap.ui.drawn.Week.Sky;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What the week sheet says on paper. */
public final class WeekPaperPresenter {
    private static final int HOUR = 60;

    private final Speech say;
    private final Week week;

    private WeekPaperPresenter(Speech say, Week week) {
        this.say = say;
        this.week = week;
    }

    /** @param link what opens it on a screen */
    public static WeekPlan sheet(Speech say, FolderShown shown, WeekChoice choice, Instant now, String link) {
        var presenter = new WeekPaperPresenter(say, WeekPresenter.week(say, shown, choice));
        var week = presenter.week;
        return new WeekPlan(
                say,
                presenter.title(shown, choice),
                presenter.origin(shown, now),
                presenter.notes(shown),
                where(shown, choice),
                link,
                week.fromHour() * HOUR,
                week.untilHour() * HOUR,
                week.days().stream().map(presenter::day).toList(),
                week.crews().stream().map(presenter::crew).toList());
    }

    private String title(FolderShown shown, WeekChoice choice) {
        String days = week.days().isEmpty()
                ? say.it("no days")
                : say.it(
                        "{0} to {1}",
                        name(week.days().getFirst()), name(week.days().getLast()));
        String of = Stream.of(
                        choice.site() == null ? "" : shown.site(choice.site()).name(),
                        choice.trade() == null ? "" : say.it(Words.crewOf(choice.trade())),
                        choice.crew() == null ? "" : say.it("crew {0}", choice.crew()))
                .filter(words -> !words.isEmpty())
                .collect(joining(", "));
        return of.isEmpty() ? say.it("Crews, {0}", days) : say.it("Crews, {0}: {1} only", days, of);
    }

    private static String name(Day day) {
        return "%s %s".formatted(day.weekday(), day.label());
    }

    private String origin(FolderShown shown, Instant now) {
        ZoneId zone = shown.folder().sites().getFirst().zone();
        var publication = shown.choice().publication();
        String plan = say.it("By a PROPOSAL that is not published: crews do not work by it");
        if (shown.plan().isEmpty()) plan = say.it("Nothing is planned");
        else if (publication != null
                && shown.choice().shownId().filter(publication.plan()::equals).isPresent())
            plan = say.it("By the plan published {0}", say.moment(publication.at(), zone));
        return say.it(
                "{0}; printed {1}. Newer plans, forecasts and marks are not on this paper: the code opens what is current.",
                plan, say.moment(now, zone));
    }

    /** What stands open before rain comes first. */
    private List<String> notes(FolderShown shown) {
        var cover = CoverNowList.of(say, shown);
        List<String> notes = new ArrayList<>();
        if (!cover.rows().isEmpty())
            notes.add(say.it(
                    "Open to rain now, close or cover first: {0}",
                    cover.rows().stream().map(CoverNowList.Row::opening).collect(joining(", "))));
        return notes;
    }

    /** Of the sites that are on the paper. */
    private static List<String> where(FolderShown shown, WeekChoice choice) {
        return shown.folder().sites().stream()
                .filter(site -> choice.admits(site) && site.address().known())
                .map(Site::nameAndAddress)
                .toList();
    }

    /** Sites that have the same rain share a line. */
    private WeekPlan.Day day(Day day) {
        Map<String, List<String>> sites = new LinkedHashMap<>();
        for (SiteSky site : day.sites()) {
            String hours = within(site.sky(), "rain")
                    .map(sky -> clock(sky.from()) + "–" + clock(sky.until()))
                    .collect(joining(", "));
            if (!hours.isEmpty())
                sites.computeIfAbsent(hours, _ -> new ArrayList<>()).add(site.site());
        }
        return new WeekPlan.Day(
                name(day),
                sites.entrySet().stream()
                        .map(rain -> say.it("Rain {0}: {1}", rain.getKey(), String.join(", ", rain.getValue())))
                        .toList());
    }

    /** Rain by night is of no use on this paper. */
    private Stream<Sky> within(List<Sky> sky, String kind) {
        return sky.stream()
                .filter(one -> one.kind().equals(kind))
                .map(one -> new Sky(
                        kind,
                        Math.max(one.from(), week.fromHour() * HOUR),
                        Math.min(one.until(), week.untilHour() * HOUR)))
                .filter(one -> one.from() < one.until());
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR, minute % HOUR);
    }

    private WeekPlan.Crew crew(CrewRow crew) {
        return new WeekPlan.Crew(
                crew.crew(), crew.trade(), crew.days().stream().map(this::cell).toList());
    }

    private WeekPlan.Cell cell(CrewDay day) {
        String said = !day.blocks().isEmpty()
                ? ""
                : say.it(day.shift() == null ? "off" : day.idle().equals(say.it("past")) ? "before this plan" : "free");
        return new WeekPlan.Cell(
                said,
                bands(day),
                day.blocks().stream().map(block -> stay(block, day.sky())).toList());
    }

    private static List<Band> bands(CrewDay day) {
        List<Band> bands = new ArrayList<>();
        if (day.shift() != null)
            bands.add(new Band(Kind.SHIFT, day.shift().from(), day.shift().until()));
        day.sky()
                .forEach(sky -> bands.add(new Band(
                        switch (sky.kind()) {
                            case "rain" -> Kind.RAIN;
                            case "dark" -> Kind.DARK;
                            default -> Kind.NOT_FORECAST;
                        },
                        sky.from(),
                        sky.until())));
        day.blocks().stream()
                .flatMap(block -> block.items().stream())
                .forEach(item -> bands.add(new Band(Kind.WORK, item.start(), item.end())));
        return bands;
    }

    private Stay stay(Block block, List<Sky> sky) {
        List<String> warnings = new ArrayList<>();
        boolean wet = sky.stream()
                .anyMatch(one -> one.kind().equals("rain") && one.from() < block.until() && block.from() < one.until());
        if (wet) warnings.add(say.it("rain is told for these hours"));
        if (block.beyond()) warnings.add(say.it("beyond the forecast"));
        return new Stay(
                "%s–%s %s%s"
                        .formatted(
                                block.fromText(),
                                block.untilText(),
                                say.it(Words.task(Coded.of(Task.class, block.task()))),
                                block.pinned() ? " (%s)".formatted(say.it("pinned")) : ""),
                say.it("{0}, {1}, level {2}", block.site(), block.facade(), block.level()),
                block.items().stream().map(Item::opening).collect(joining(", ")),
                warnings);
    }
}
