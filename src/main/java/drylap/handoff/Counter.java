package drylap.handoff;

import static drylap.persistence.jooq.Tables.OPENING;

import drylap.handoff.HandoffAct.Entry;
import drylap.handoff.HandoffResult.ChangedMeanwhile;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Where every act is made: one at a time for each opening, once for each key, by someone who may, on what they saw. */
@Service
final class Counter {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final OpeningStates states;
    private final Acts acts;
    private final HandoffRecords records;
    private final ApplicationEventPublisher events;

    Counter(
            DSLContext db,
            TransactionTemplate transaction,
            OpeningStates states,
            Acts acts,
            HandoffRecords records,
            ApplicationEventPublisher events) {
        this.db = db;
        this.transaction = transaction;
        this.states = states;
        this.acts = acts;
        this.records = records;
        this.events = events;
    }

    /** What is done with openings that nobody else can change meanwhile. */
    interface Deed extends Function<List<OpeningState>, Verdict> {}

    /** Either what speaks against it, or the act to write down. */
    record Verdict(Optional<HandoffResult> refusal, Optional<NewAct> act) {
        static Verdict refuse(HandoffResult why) {
            return new Verdict(Optional.of(why), Optional.empty());
        }

        static Verdict write(NewAct act) {
            return new Verdict(Optional.empty(), Optional.of(act));
        }
    }

    /** @throws NotAllowed where one of the openings is not this person's to do this with */
    HandoffResult act(Person who, Operation operation, HandoffRequest request, Deed deed) {
        return transaction.execute(status -> {
            lock(request.folder(), request.openings());
            var now = request.openings().stream()
                    .map(opening -> states.of(who, request.folder(), opening))
                    .toList();
            siteOf(now).forEach(site -> who.demand(operation, site));
            var before = acts.written(request.key());
            if (before.isPresent()) return new HandoffResult.AlreadyDone(records.act(before.get()));
            var result = stale(request, now).orElseGet(() -> carryOut(who, deed.apply(now)));
            if (!result.done()) status.setRollbackOnly();
            return result;
        });
    }

    private HandoffResult carryOut(Person who, Verdict verdict) {
        return verdict.refusal().orElseGet(() -> written(who, verdict.act().orElseThrow()));
    }

    private HandoffResult written(Person who, NewAct act) {
        var written = records.act(acts.write(who, act));
        events.publishEvent(new ActWritten(act.folder(), written));
        return new HandoffResult.Done(written);
    }

    private static Optional<HandoffResult> stale(HandoffRequest request, List<OpeningState> now) {
        return now.stream()
                .filter(state -> !request.sawVersion(state.opening().id(), state.version()))
                .findFirst()
                .map(state -> new ChangedMeanwhile(state.opening().id(), lastChange(state)));
    }

    private static Saying lastChange(OpeningState state) {
        var last = state.lastMark();
        return last == null
                ? Saying.of("was changed since you looked at it")
                : Saying.of("was changed since you looked at it, last by {0}", last.person());
    }

    private static Set<SiteId> siteOf(List<OpeningState> states) {
        var sites = states.stream().map(OpeningState::site).collect(Collectors.toSet());
        if (sites.size() > 1)
            throw new IllegalArgumentException("openings of %d sites; accepted: of one".formatted(sites.size()));
        return sites;
    }

    private void lock(FolderId folder, List<OpeningId> openings) {
        db.select(OPENING.OPENING_)
                .from(OPENING)
                .where(
                        OPENING.FOLDER_ID.eq(folder.value()),
                        OPENING.OPENING_.in(
                                openings.stream().map(OpeningId::value).toList()))
                .orderBy(OPENING.OPENING_)
                .forNoKeyUpdate()
                .fetch();
    }

    static Entry entry(OpeningState state) {
        return new Entry(
                state.opening().id(),
                state.rating().code(),
                "%s; %s".formatted(state.rating().words(), state.apron().words()),
                state.version());
    }

    /** A mark that belongs to an act has a key of its own, the same whenever the act is sent. */
    static UUID keyOf(UUID act, OpeningId opening, String line) {
        return UUID.nameUUIDFromBytes("%s/%s/%s".formatted(act, opening, line).getBytes(StandardCharsets.UTF_8));
    }
}
