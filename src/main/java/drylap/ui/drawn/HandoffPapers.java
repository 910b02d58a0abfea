package drylap.ui.drawn;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;

import drylap.handoff.ActKind;
import drylap.handoff.HandoffAct;
import drylap.handoff.HandoffAct.Entry;
import drylap.kernel.Course;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.HandoffPaper.Line;
import drylap.ui.drawn.HandoffPaper.Link;
import drylap.ui.drawn.OpeningSheet.Fact;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the acts of handing over on paper. */
public final class HandoffPapers {
    private static final int NAMED_OPENINGS = 6;

    private final Speech say;
    private final Map<SiteId, Site> sites;
    private final Map<OpeningId, Opening> openings;

    /** @param openings of the folder in work, as far as the person may see them */
    public HandoffPapers(Speech say, List<Site> sites, List<Opening> openings) {
        this.say = say;
        this.sites = sites.stream().collect(toMap(Site::id, site -> site));
        this.openings = openings.stream().collect(toMap(Opening::id, opening -> opening));
    }

    /**
     * A line of the list of records.
     *
     * @param at by the clock on the wall of its site
     */
    public record Row(
            long id,
            LocalDateTime at,
            String when,
            String what,
            String openings,
            String place,
            String who,
            String why) {}

    /** Where something was handed over at all. */
    public List<Course> courses(List<HandoffAct> acts) {
        return acts.stream()
                .flatMap(act -> act.entries().stream())
                .flatMap(entry -> Optional.ofNullable(openings.get(entry.opening())).map(Opening::course).stream())
                .distinct()
                .sorted()
                .toList();
    }

    public String words(Course course) {
        return say.it(
                "{0}, {1}, level {2}",
                siteName(course.facade().site()), course.facade().facade(), course.level());
    }

    /** @param part of an opening's name, blank for any; no course: any */
    public List<Row> rows(List<HandoffAct> acts, String part, Optional<Course> course) {
        String wanted = part.strip().toLowerCase(java.util.Locale.ROOT);
        return acts.stream()
                .filter(act -> act.entries().stream()
                        .anyMatch(entry -> named(entry, wanted)
                                && course.map(one -> lies(entry, one)).orElse(true)))
                .map(this::row)
                .toList();
    }

    /** @param all the acts of its folder, as far as the person may see them */
    public HandoffPaper paper(HandoffAct act, List<HandoffAct> all) {
        var mine = act.entries().stream().map(Entry::opening).toList();
        return new HandoffPaper(
                act.id(),
                "%s: %s".formatted(capital(what(act)), names(act)),
                facts(act),
                act.entries().stream().map(entry -> line(act, entry)).toList(),
                act.photos(),
                all.stream()
                        .filter(other ->
                                other.entries().stream().map(Entry::opening).anyMatch(mine::contains))
                        .sorted(Comparator.comparingLong(HandoffAct::id))
                        .map(other -> link(other, act))
                        .toList(),
                mine.size() == 1 ? Optional.of(mine.getFirst()) : Optional.empty());
    }

    private Row row(HandoffAct act) {
        return new Row(
                act.id(),
                LocalDateTime.ofInstant(act.at(), zone(act)),
                when(act),
                what(act),
                names(act),
                places(act),
                who(act),
                why(act));
    }

    private boolean named(Entry entry, String wanted) {
        return entry.opening().value().toLowerCase(java.util.Locale.ROOT).contains(wanted);
    }

    private boolean lies(Entry entry, Course course) {
        var opening = openings.get(entry.opening());
        return opening != null && opening.course().equals(course);
    }

    private List<Fact> facts(HandoffAct act) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(say.it("Where"), places(act)));
        var site = sites.get(act.site());
        if (site != null && site.address().known())
            facts.add(new Fact(say.it("Address"), site.address().inOneLine()));
        facts.add(new Fact(say.it(act.kind() == ActKind.RELEASED ? "Released by" : "By"), who(act)));
        facts.add(new Fact(say.it("When"), when(act)));
        if (act.holdPoint() != null)
            facts.add(new Fact(say.it("Hold point"), say.it(act.holdPoint().words())));
        if (act.reason() != null)
            facts.add(new Fact(say.it("Reason"), say.it(act.reason().words())));
        var test = act.test();
        if (test != null) {
            facts.add(new Fact(say.it("Test"), say.it("{0} Pa for {1} min", test.pressurePa(), test.minutes())));
            facts.add(new Fact(say.it("Counts as a leak"), say.it(test.leak().words())));
        }
        if (!act.note().isBlank()) facts.add(new Fact(say.it("Note"), act.note()));
        return List.copyOf(facts);
    }

    private Line line(HandoffAct act, Entry entry) {
        return new Line(entry.opening().value(), place(act, entry), entry.rating(), say.it(WrittenState.of(entry)));
    }

    private Link link(HandoffAct other, HandoffAct self) {
        String shared = other.entries().stream()
                .map(Entry::opening)
                .filter(opening ->
                        self.entries().stream().anyMatch(mine -> mine.opening().equals(opening)))
                .map(OpeningId::value)
                .collect(joining(", "));
        String why = why(other);
        return new Link(
                other.id(),
                when(other),
                why.isEmpty() ? what(other) : say.it("{0}: {1}", what(other), why),
                who(other),
                shared,
                other.id() == self.id());
    }

    private String what(HandoffAct act) {
        var kind = Saying.of(act.kind().words());
        return act.holdPoint() == null
                ? say.it(kind)
                : say.it("{0}: {1}", kind, Saying.of(act.holdPoint().words()));
    }

    private String why(HandoffAct act) {
        return act.reason() == null ? act.note() : say.it(act.reason().words());
    }

    private String names(HandoffAct act) {
        var names = act.entries().stream().map(entry -> entry.opening().value()).toList();
        return names.size() <= NAMED_OPENINGS
                ? String.join(", ", names)
                : say.it(
                        "{0} and {1} more",
                        String.join(", ", names.subList(0, NAMED_OPENINGS)), names.size() - NAMED_OPENINGS);
    }

    private String places(HandoffAct act) {
        return act.entries().stream().map(entry -> place(act, entry)).distinct().collect(joining("; "));
    }

    /** An opening of an earlier folder may be gone from this one; its site is kept in the act. */
    private String place(HandoffAct act, Entry entry) {
        var opening = openings.get(entry.opening());
        return opening == null ? siteName(act.site()) : words(opening.course());
    }

    private String who(HandoffAct act) {
        var who = act.who();
        return who.crew() == null
                ? say.it("{0} ({1})", who.name(), Saying.of(who.role()))
                : say.it("{0} ({1}, crew {2})", who.name(), Saying.of(who.role()), who.crew());
    }

    private String when(HandoffAct act) {
        ZoneId zone = zone(act);
        return "%s %d"
                .formatted(say.moment(act.at(), zone), act.at().atZone(zone).getYear());
    }

    private ZoneId zone(HandoffAct act) {
        var site = sites.get(act.site());
        return site == null ? ZoneOffset.UTC : site.zone();
    }

    private String siteName(SiteId id) {
        var site = sites.get(id);
        return site == null ? id.value() : site.name();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
