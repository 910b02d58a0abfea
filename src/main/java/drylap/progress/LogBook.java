package drylap.progress;

import drylap.assembly.WorkLine;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.MarkResult.AlreadyMarked;
import drylap.progress.MarkResult.Marked;
import drylap.progress.MarkResult.Refused;
import drylap.security.History;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Writes an entry while nobody else writes to the same opening. */
@Service
final class LogBook {
    private final OpeningStates states;
    private final Marks marks;
    private final History history;
    private final News news;
    private final TransactionTemplate transaction;

    LogBook(OpeningStates states, Marks marks, History history, News news, TransactionTemplate transaction) {
        this.states = states;
        this.marks = marks;
        this.history = history;
        this.news = news;
        this.transaction = transaction;
    }

    /** One line of one opening that someone wants marked. */
    record Entry(Person who, Opening opening, WorkLine line, MarkRequest request) {}

    /** @param refusal asked of the opening as it stands once nobody else can change it */
    MarkResult add(Entry entry, Function<OpeningState, Optional<Refused>> refusal) {
        return transaction.execute(_ -> {
            var request = entry.request();
            if (!marks.lock(request.folder(), entry.opening()))
                return Refused.because(
                        Saying.of("opening {0} has another method since you looked; open it again", request.opening()));
            var before = marks.byKey(request);
            if (before.isPresent()) return already(before.get());
            var state = states.state(request.folder(), entry.opening());
            if (saysSo(state, entry)) return meanwhile(state, entry);
            var refused = refusal.apply(state);
            return refused.isPresent() ? refused.get() : write(entry);
        });
    }

    private MarkResult write(Entry entry) {
        var request = entry.request();
        if (!marks.add(entry.who(), entry.opening(), request))
            return Refused.because(Saying.of("the key of this mark was used for another one: {0}", request.key()));
        var site = entry.opening().facade().site();
        if (request.reason() != null)
            history.note(
                    entry.who(),
                    site,
                    "undid \"%s\" at opening %s: %s"
                            .formatted(entry.line().text(), request.opening(), request.reason()));
        news.tell(new NewsItem(
                StepLog.TOPIC,
                request.folder().value(),
                site.value(),
                request.opening().value()));
        return new Marked(states.state(request.folder(), entry.opening()));
    }

    /** Done where it is to be done, or undone where it is to be undone. */
    private static boolean saysSo(OpeningState state, Entry entry) {
        boolean done = state.done(entry.line()).isPresent();
        return done == (entry.request().kind() == MarkKind.DONE);
    }

    private MarkResult meanwhile(OpeningState state, Entry entry) {
        return marks.of(state.folder(), state.opening().id()).reversed().stream()
                .filter(mark -> mark.line().equals(entry.line().code()))
                .findFirst()
                .<MarkResult>map(LogBook::already)
                .orElseGet(() -> entry.request().kind() == MarkKind.DONE
                        ? new AlreadyMarked(null, state.opening().doneAt())
                        : Refused.because(Saying.of(
                                "{0}: is not done, so it cannot be undone",
                                entry.line().saying())));
    }

    private static AlreadyMarked already(Mark mark) {
        return new AlreadyMarked(mark.person(), mark.markedAt());
    }
}
