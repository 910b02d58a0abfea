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

    private final Map<SiteId, Site> sites;
    private final Map<OpeningId, Opening> openings;

    /** @param openings of the folder in work, as far as the person may see them */
    public HandoffPapers(List<Site> sites, List<Opening> openings) {
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
        return "%s, %s, level %d"
                .formatted(siteName(course.facade().site()), course.facade().facade(), course.level());
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
        facts.add(new Fact("Where", places(act)));
        facts.add(new Fact(act.kind() == ActKind.RELEASED ? "Released by" : "By", who(act)));
        facts.add(new Fact("When", when(act)));
        if (act.holdPoint() != null)
            facts.add(new Fact("Hold point", act.holdPoint().words()));
        if (act.reason() != null) facts.add(new Fact("Reason", act.reason().words()));
        var test = act.test();
        if (test != null) {
            facts.add(new Fact("Test", "%d Pa for %d min".formatted(test.pressurePa(), test.minutes())));
            facts.add(new Fact("Counts as a leak", test.leak().words()));
        }
        if (!act.note().isBlank()) facts.add(new Fact("Note", act.note()));
        return List.copyOf(facts);
    }

    private Line line(HandoffAct act, Entry entry) {
        return new Line(entry.opening().value(), place(act, entry), entry.rating(), entry.state());
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
                why.isEmpty() ? what(other) : "%s: %s".formatted(what(other), why),
                who(other),
                shared,
                other.id() == self.id());
    }

    private static String what(HandoffAct act) {
        return act.holdPoint() == null
                ? act.kind().words()
                : "%s: %s".formatted(act.kind().words(), act.holdPoint().words());
    }

    private static String why(HandoffAct act) {
        return act.reason() == null ? act.note() : act.reason().words();
    }

    private static String names(HandoffAct act) {
        var names = act.entries().stream().map(entry -> entry.opening().value()).toList();
        return names.size() <= NAMED_OPENINGS
                ? String.join(", ", names)
                : "%s and %d more"
                        .formatted(String.join(", ", names.subList(0, NAMED_OPENINGS)), names.size() - NAMED_OPENINGS);
    }

    private String places(HandoffAct act) {
        return act.entries().stream().map(entry -> place(act, entry)).distinct().collect(joining("; "));
    }

    /** An opening of an earlier folder may be gone from this one; its site is kept in the act. */
    private String place(HandoffAct act, Entry entry) {
        var opening = openings.get(entry.opening());
        return opening == null ? siteName(act.site()) : words(opening.course());
    }

    private static String who(HandoffAct act) {
        var who = act.who();
        return who.crew() == null
                ? "%s (%s)".formatted(who.name(), who.role())
                : "%s (%s, crew %s)".formatted(who.name(), who.role(), who.crew());
    }

    private String when(HandoffAct act) {
        ZoneId zone = zone(act);
        return "%s %d"
                .formatted(Words.moment(act.at(), zone), act.at().atZone(zone).getYear());
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
