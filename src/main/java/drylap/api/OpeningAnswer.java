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
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An opening as a phone shows it. */
record OpeningAnswer(
        long folder,
        String opening,
        String site,
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

    /** @param why what speaks against marking it now; none where it may be marked or is done */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Line(
            String code,
            String text,
            String trade,
            @Nullable Integer number,
            boolean installBlock,
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

    static OpeningAnswer of(OpeningState state) {
        var rating = state.rating();
        return new OpeningAnswer(
                state.folder().value(),
                state.opening().id().value(),
                state.site().value(),
                state.version(),
                new Rating(rating.code(), rating.words(), rating.mayBeLeft()),
                state.weaknesses().stream().map(Weakness::words).distinct().toList(),
                state.missing().stream().map(Lap::words).toList(),
                state.apron().words(),
                state.plane().words(),
                state.releasable(),
                state.released(),
                state.list().lines().stream().map(line -> line(state, line)).toList(),
                state.exposures().stream().map(OpeningAnswer::sun).toList(),
                LapSection.svg(state.built(), LapSection.Layout.STACKED));
    }

    private static Line line(OpeningState state, WorkLine line) {
        var done = state.done(line);
        var mark = done.map(LineDone::mark).orElse(null);
        return new Line(
                line.code(),
                line.text(),
                line.trade().code(),
                line.number().isPresent() ? line.number().getAsInt() : null,
                line.installBlock(),
                done.isPresent(),
                state.next().contains(line),
                why(state.check(line)),
                done.map(LineDone::at).orElse(null),
                mark == null ? null : mark.person(),
                mark == null ? null : mark.note(),
                photos(mark));
    }

    private static @Nullable String why(MarkCheck check) {
        return check instanceof MarkCheck.Legal || check instanceof MarkCheck.AlreadyDone ? null : check.words();
    }

    private static @Nullable List<UUID> photos(@Nullable Mark mark) {
        return mark == null || mark.photos().isEmpty() ? null : mark.photos();
    }

    private static Sun sun(Exposed exposed) {
        return new Sun(
                exposed.part().words(),
                exposed.words(),
                exposed.since(),
                exposed.limitDays(),
                exposed.daysLeft(),
                exposed.source());
    }
}
