package drylap.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.assembly.Lap;
import drylap.assembly.LapSection;
import drylap.assembly.MarkCheck;
import drylap.assembly.Weakness;
import drylap.assembly.WorkLine;
import drylap.progress.Exposed;
import drylap.progress.LineDone;
import drylap.progress.Mark;
import drylap.progress.OpeningState;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** An opening as a phone shows it. */
record OpeningAnswer(
        long folder,
        String opening,
        String site,
        String facade,
        int level,
        String variant,
        long version,
        Rating rating,
        List<String> weaknesses,
        List<String> missingLaps,
        String apron,
        String drainsTo,
        boolean releasable,
        boolean released,
        List<Line> lines,
        List<Sun> sun,
        String svg) {

    /** The letter is never shown without its words. */
    record Rating(String code, String words, boolean mayBeLeft) {}

    /**
     * @param yours of the trade of the person who asks
     * @param release ticked by the hand-off, never by hand
     * @param waitsFor the codes of all lines that must be done before it, so that a phone can go on without us
     * @param why what speaks against marking it now; none where it may be marked or is done
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Line(
            String code,
            String text,
            String trade,
            @Nullable Integer number,
            boolean installBlock,
            boolean yours,
            boolean release,
            List<String> waitsFor,
            boolean done,
            boolean next,
            @Nullable String why,
            @Nullable Instant at,
            @Nullable String by,
            @Nullable String note,
            @Nullable List<UUID> photoIds) {}

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Sun(
            String layer,
            String words,
            @Nullable Instant since,
            double limitDays,
            @Nullable Integer daysLeft,
            String source) {}

    /** @param yours whose lines the person who asks may tick */
    static OpeningAnswer of(OpeningState state, Predicate<WorkLine> yours, Speech say) {
        var rating = state.rating();
        return new OpeningAnswer(
                state.folder().value(),
                state.opening().id().value(),
                state.site().value(),
                state.opening().facade().facade(),
                state.opening().level(),
                VariantName.of(state.list().variant()),
                state.version(),
                new Rating(rating.code(), say.it(rating.words()), rating.mayBeLeft()),
                state.weaknesses().stream()
                        .map(Weakness::saying)
                        .map(say::it)
                        .distinct()
                        .toList(),
                state.missing().stream().map(Lap::saying).map(say::it).toList(),
                say.it(state.apron().saying()),
                say.it(state.plane().words()),
                state.releasable(),
                state.released(),
                state.list().lines().stream()
                        .map(line -> line(state, line, yours.test(line), say))
                        .toList(),
                state.exposures().stream().map(one -> sun(one, say)).toList(),
                LapSection.svg(state.built(), LapSection.Layout.STACKED, say));
    }

    private static Line line(OpeningState state, WorkLine line, boolean yours, Speech say) {
        var done = state.done(line);
        var mark = done.map(LineDone::mark).orElse(null);
        return new Line(
                line.code(),
                say.it(line.saying()),
                line.trade().code(),
                line.number().isPresent() ? line.number().getAsInt() : null,
                line.installBlock(),
                yours,
                line.release(),
                state.list().missing(Set.of(), line).stream()
                        .map(WorkLine::code)
                        .toList(),
                done.isPresent(),
                state.next().contains(line),
                why(state.check(line), say),
                done.map(LineDone::at).orElse(null),
                mark == null ? null : mark.person(),
                mark == null ? null : mark.note(),
                photos(mark));
    }

    private static @Nullable String why(MarkCheck check, Speech say) {
        return check instanceof MarkCheck.Legal || check instanceof MarkCheck.AlreadyDone
                ? null
                : say.it(check.saying());
    }

    private static @Nullable List<UUID> photos(@Nullable Mark mark) {
        return mark == null || mark.photos().isEmpty() ? null : mark.photos();
    }

    private static Sun sun(Exposed exposed, Speech say) {
        return new Sun(
                say.it(exposed.part().words()),
                say.it(exposed.saying()),
                exposed.since(),
                exposed.limitDays(),
                exposed.daysLeft(),
                say.it(exposed.source()));
    }
}
