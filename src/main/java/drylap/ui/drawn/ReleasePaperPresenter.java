package drylap.ui.drawn;

import drylap.kernel.Course;
import drylap.papers.ReleaseSheet;
import drylap.progress.Exposed;
import drylap.progress.OpeningState;
import drylap.security.Person;
import drylap.sites.StreetAddress;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a course's release says on paper. */
public final class ReleasePaperPresenter {
    private ReleasePaperPresenter() {}

    /** Empty where the person sees no opening of the course. */
    public static Optional<ReleaseSheet> sheet(ApronFacts facts, Person who, Course course, Instant now) {
        var states = facts.states().stream()
                .filter(state -> state.opening().course().equals(course))
                .toList();
        if (states.isEmpty()) return Optional.empty();
        var first = states.getFirst();
        var say = new Speech(who.reading());
        return ApronPresenter.aprons(facts, who)
                .face(course.facade())
                .flatMap(face -> face.courses().stream()
                        .filter(one -> one.level() == course.level())
                        .findFirst())
                .map(sheet -> new ReleaseSheet(
                        say,
                        say.it("Release: {0}, level {1}", facts.title(first), course.level()),
                        say.it(
                                "Printed {0}. What was done since is not on this paper.",
                                say.moment(now, facts.site(first).zone())),
                        about(say, sheet, facts.site(first).address()),
                        states.stream().map(state -> row(say, facts, state)).toList()));
    }

    private static List<String> about(Speech say, Aprons.CourseSheet sheet, StreetAddress address) {
        var where = address.known() ? Stream.of(say.it("Address: {0}", address.inOneLine())) : Stream.<String>of();
        return Stream.concat(where, about(say, sheet)).toList();
    }

    private static Stream<String> about(Speech say, Aprons.CourseSheet sheet) {
        return Stream.of(
                        Stream.of(sheet.ready()),
                        sheet.laps().stream(),
                        sheet.coming().stream().map(words -> say.it("Coming: {0}", words)))
                .flatMap(lines -> lines)
                .map(words -> words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".");
    }

    private static ReleaseSheet.Row row(Speech say, ApronFacts facts, OpeningState state) {
        var custody = facts.custody(state);
        var hand = facts.hand(state);
        List<String> words = new ArrayList<>();
        words.add(ApronWords.hand(say, custody, hand, facts.site(state)));
        words.add(say.it(ApronWords.lap(state)));
        state.exposures().stream().map(Exposed::saying).map(say::it).forEach(words::add);
        return new ReleaseSheet.Row(
                state.opening().id().value(),
                FrontOf.glyph(WallPresenter.glyph(say, state, custody)),
                hand.letGo(),
                words);
    }
}
