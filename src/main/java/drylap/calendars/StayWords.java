package drylap.calendars;

import drylap.kernel.Caution;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.takeoff.TakeOff;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says a stay in words, from the folder as it stands. */
final class StayWords {
    private final Speech say;
    private final JobFolder folder;
    private final Plan plan;
    private final Map<OpeningId, Opening> openings;

    StayWords(Speech say, JobFolder folder, Plan plan) {
        this.say = say;
        this.folder = folder;
        this.plan = plan;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
    }

    Told told(Stay stay) {
        Site site = folder.sites().stream()
                .filter(one -> one.id().equals(stay.key().site()))
                .findFirst()
                .orElseThrow();
        return new Told(
                stay.start(),
                stay.end(),
                "%s: %s".formatted(site.name(), work(stay)),
                site.nameAndAddress(),
                site.place(),
                description(stay, site));
    }

    /** A crew has one trade, so that all its visits are of one task. */
    private String work(Stay stay) {
        long count = stay.visits().stream().map(Visit::opening).distinct().count();
        return say.it(
                switch (stay.visits().getFirst().task()) {
                    case INSTALL -> "install {0, plural, one {# opening} other {# openings}}";
                    case TEST -> "test {0, plural, one {# opening} other {# openings}}";
                    case WRAP -> "wrap {0, plural, one {# opening} other {# openings}}";
                    case CLAD -> "clad {0, plural, one {# opening} other {# openings}}";
                },
                count);
    }

    private String description(Stay stay, Site site) {
        String visits =
                stay.visits().stream().map(visit -> line(visit, site.zone())).collect(Collectors.joining("\n"));
        String bring =
                bring(stay).map(load -> "\n\n" + say.it("Bring: {0}", load)).orElse("");
        String hours = say.it(
                "{0} to {1} by the clock of {2}",
                say.clock(stay.start(), site.zone()), say.clock(stay.end(), site.zone()), site.zone());
        return "%s\n\n%s%s\n\n%s".formatted(hours, visits, bring, say.it(Caution.WORDS));
    }

    private String line(Visit visit, ZoneId zone) {
        Opening opening = Objects.requireNonNull(openings.get(visit.opening()));
        return say.it(
                switch (visit.task()) {
                    case INSTALL -> "{0} {1}, {2}, level {3}: install, method {4}, {5}";
                    case TEST -> "{0} {1}, {2}, level {3}: test, method {4}, {5}";
                    case WRAP -> "{0} {1}, {2}, level {3}: wrap, method {4}, {5}";
                    case CLAD -> "{0} {1}, {2}, level {3}: clad, method {4}, {5}";
                },
                say.clock(visit.start(), zone),
                visit.opening(),
                visit.facade().facade(),
                visit.level(),
                opening.method().code(),
                say.size(opening.widthMm(), opening.heightMm()));
    }

    /** Of what was left to do when it was told; how strips are cut stands on the page My day. */
    private Optional<String> bring(Stay stay) {
        try {
            return Optional.of(TakeOff.ofVisits(folder, stay.visits()))
                    .filter(load -> !load.isEmpty())
                    .map(load ->
                            say.it("{0}; {1}. My day tells how to cut the strips.", load.counts(), load.lengths()));
        } catch (IllegalArgumentException unknown) {
            return Optional.of(say.it("cannot be said: {0}", Unfit.saying(unknown)));
        }
    }
}
