package drylap.progress;

import drylap.assembly.MarkCheck;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.progress.LogBook.Entry;
import drylap.progress.MarkResult.NotYours;
import drylap.progress.MarkResult.Refused;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;

/** Adds to the log of an opening what its laps allow, one entry at a time. */
@Service
public final class StepLog {
    public static final String TOPIC = "progress";

    private final OpeningStates states;
    private final LogBook book;
    private final MarkRights rights;
    private final ObjectProvider<UndoVeto> vetoes;
    private final Clock clock;

    StepLog(OpeningStates states, LogBook book, MarkRights rights, ObjectProvider<UndoVeto> vetoes, Clock clock) {
        this.states = states;
        this.book = book;
        this.rights = rights;
        this.vetoes = vetoes;
        this.clock = clock;
    }

    /**
     * Marks a line as done or undone.
     *
     * @throws NotAllowed where the opening or the line is not this person's
     */
    public MarkResult mark(Person who, MarkRequest request) {
        if (request.kind() == MarkKind.UNDONE) who.demand(Operation.UNDO_MARK);
        var opening = states.openingFor(who, request.folder(), request.opening());
        var line = opening.workList().line(request.line());
        if (line.isEmpty()) return noSuchLine(request, opening);
        rights.demand(who, request.folder(), opening.facade().site(), line.get());
        var entry = new Entry(who, opening, line.get(), request);
        return request.kind() == MarkKind.DONE
                ? book.add(entry, state -> unlessLegal(state, entry.line()))
                : book.add(entry, state -> unlessFree(state, entry.line()));
    }

    /** Whether the line is of this person's trade and site; whether its turn has come is another question. */
    public boolean mayMark(Person who, OpeningState state, WorkLine line) {
        return rights.allow(who, state.folder(), state.site(), line);
    }

    /** Undoes a line, with the reason; refused while lines that rest on it are done. */
    public MarkResult undo(Person who, FolderId folder, OpeningId opening, String line, String reason, UUID key) {
        return mark(who, MarkRequest.undone(key, folder, opening, line, clock.instant(), reason));
    }

    /** Each in its turn and for itself: one that is refused does not keep the next from being marked. */
    public List<MarkResult> markAll(Person who, List<MarkRequest> requests) {
        return requests.stream().map(request -> markOrSay(who, request)).toList();
    }

    /** Ticks the line of the release once all that it waits for is done; the hand-off's way, in its transaction. */
    public MarkResult release(Person who, FolderId folder, OpeningId id, Instant at, UUID key) {
        var opening = states.openingFor(who, folder, id);
        who.demand(Operation.RELEASE, opening.facade().site());
        var line = opening.workList().release();
        var request = MarkRequest.done(key, folder, id, line.code(), at);
        return book.add(
                new Entry(who, opening, line, request),
                state -> state.releasable() ? Optional.empty() : Optional.of(Refused.by(line, state.check(line))));
    }

    /**
     * Unticks a line on which no other done line rests, the release among them; the hand-off's way, in its transaction.
     *
     * @param by what gives the person the right to it, such as {@code RETURN}
     * @param line the code of a line of this opening
     */
    public MarkResult takeBack(
            Person who, Operation by, FolderId folder, OpeningId id, String line, String reason, UUID key) {
        var opening = states.openingFor(who, folder, id);
        who.demand(by, opening.facade().site());
        var taken = opening.workList().line(line).orElseThrow();
        var request = MarkRequest.undone(key, folder, id, line, clock.instant(), reason);
        return book.add(new Entry(who, opening, taken, request), state -> whileResting(state, taken));
    }

    private MarkResult markOrSay(Person who, MarkRequest request) {
        try {
            return mark(who, request);
        } catch (NotAllowed refusal) {
            return new NotYours();
        }
    }

    private static Optional<Refused> unlessLegal(OpeningState state, WorkLine line) {
        var check = state.check(line);
        return check instanceof MarkCheck.Legal ? Optional.empty() : Optional.of(Refused.by(line, check));
    }

    private Optional<Refused> unlessFree(OpeningState state, WorkLine line) {
        if (line.release())
            return Optional.of(Refused.because(Saying.of("{0}: is taken back by the hand-off only", line.saying())));
        return whileResting(state, line)
                .or(() -> vetoes.orderedStream()
                        .flatMap(veto ->
                                veto.against(state.folder(), state.opening().id(), line).stream())
                        .findFirst()
                        .map(Refused::because));
    }

    private static Optional<Refused> whileResting(OpeningState state, WorkLine line) {
        var resting = state.list().restingOn(state.done(), line);
        if (resting.isEmpty()) return Optional.empty();
        var words = Saying.of(
                "{0}: other work rests on it; undo first: {1}", line.saying(), WorkLine.list(resting.reversed()));
        return Optional.of(new Refused(words, null, null, resting));
    }

    private static Refused noSuchLine(MarkRequest request, Opening opening) {
        return Refused.because(Saying.of(
                "opening {0} has no line \"{1}\"; accepted: {2}",
                request.opening(),
                request.line(),
                opening.workList().lines().stream().map(WorkLine::code).collect(Collectors.joining(", "))));
    }
}
