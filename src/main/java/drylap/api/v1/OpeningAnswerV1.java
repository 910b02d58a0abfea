package drylap.api.v1;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.assembly.Lap;
import drylap.assembly.MarkCheck;
import drylap.assembly.Weakness;
import drylap.assembly.WorkLine;
import drylap.handoff.Custody;
import drylap.handoff.HoldPoint;
import drylap.progress.LineDone;
import drylap.progress.OpeningState;
import drylap.sites.Opening;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An opening as other programs see it: nothing of it depends on who asks or on the hour, so that its tag changes when the opening does.
 *
 * @param releasable everything that its release waits for is done; hold points may still be before it
 */
record OpeningAnswerV1(
        String opening,
        long folder,
        Design design,
        Rating rating,
        List<String> weaknesses,
        List<String> missingLaps,
        String apron,
        String drainsTo,
        boolean releasable,
        boolean released,
        Hands hands,
        List<Hold> holdPoints,
        List<Line> lines) {

    record Design(
            String site,
            String facade,
            int level,
            int widthMm,
            int heightMm,
            String frame,
            String method,
            String approach,
            String secondLayer,
            LocalDate deliveredOn,
            boolean waterTest,
            int priority) {
        static Design of(Opening opening) {
            return new Design(
                    opening.facade().site().value(),
                    opening.facade().facade(),
                    opening.level(),
                    opening.widthMm(),
                    opening.heightMm(),
                    opening.frame().code(),
                    opening.method().code(),
                    opening.approach().code(),
                    opening.secondLayer().code(),
                    opening.deliveredOn(),
                    opening.waterTest(),
                    opening.priority());
        }
    }

    /** The letter is never shown without its words. */
    record Rating(String code, String words, boolean mayBeLeft) {
        static Rating of(OpeningState state) {
            var rating = state.rating();
            return new Rating(rating.code(), rating.words(), rating.mayBeLeft());
        }
    }

    /**
     * In whose hands it is.
     *
     * @param act the number of the act that put it there; none before the first release, as with the two behind it
     * @param reason the code of why it was returned
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Hands(
            String state,
            String words,
            @Nullable Long act,
            @Nullable Instant at,
            @Nullable String by,
            @Nullable String reason,
            @Nullable String note) {
        static Hands of(Custody custody) {
            String words = custody.saying().words();
            return switch (custody) {
                case Custody.Unreleased _ -> new Hands("unreleased", words, null, null, null, null, null);
                case Custody.Released one -> new Hands("released", words, one.act(), one.at(), one.by(), null, null);
                case Custody.Accepted one -> new Hands("accepted", words, one.act(), one.at(), one.by(), null, null);
                case Custody.Returned one ->
                    new Hands(
                            "returned",
                            words,
                            one.act(),
                            one.at(),
                            one.by(),
                            one.reason().code(),
                            one.note());
            };
        }
    }

    record Hold(String holdPoint, String words, boolean passed) {}

    /**
     * @param waitsFor the codes of all lines that must be done before it
     * @param why what speaks against marking it now; none where it may be marked or is done
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Line(
            String line,
            String words,
            String trade,
            boolean release,
            List<String> waitsFor,
            boolean done,
            boolean next,
            @Nullable String why,
            @Nullable Instant at,
            @Nullable String by) {
        static Line of(OpeningState state, WorkLine line) {
            var done = state.done(line);
            var check = state.check(line);
            boolean open = check instanceof MarkCheck.Legal || check instanceof MarkCheck.AlreadyDone;
            return new Line(
                    line.code(),
                    line.text(),
                    line.trade().code(),
                    line.release(),
                    state.list().missing(Set.of(), line).stream()
                            .map(WorkLine::code)
                            .toList(),
                    done.isPresent(),
                    state.next().contains(line),
                    open ? null : check.words(),
                    done.map(LineDone::at).orElse(null),
                    done.map(LineDone::mark).map(mark -> mark.person()).orElse(null));
        }
    }

    static OpeningAnswerV1 of(OpeningState state, Custody custody, Map<HoldPoint, Boolean> passed) {
        return new OpeningAnswerV1(
                state.opening().id().value(),
                state.folder().value(),
                Design.of(state.opening()),
                Rating.of(state),
                state.weaknesses().stream().map(Weakness::words).distinct().toList(),
                state.missing().stream().map(Lap::words).toList(),
                state.apron().words(),
                state.plane().words(),
                state.releasable(),
                state.released(),
                Hands.of(custody),
                passed.entrySet().stream()
                        .map(one -> new Hold(one.getKey().code(), one.getKey().words(), one.getValue()))
                        .toList(),
                state.list().lines().stream().map(line -> Line.of(state, line)).toList());
    }
}
