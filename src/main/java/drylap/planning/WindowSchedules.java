package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.ScheduleResult.ChangedMeanwhile;
import drylap.planning.ScheduleResult.Refused;
import drylap.planning.ScheduleResult.Taken;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Facade;
import drylap.sites.Facades;
import drylap.sites.Opening;
import drylap.sites.Openings;
import drylap.sites.ScheduledOpenings;
import drylap.sites.ScheduledOpenings.Taking;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes window schedules into stored job folders: openings are added to a site or changed, all of them or none, and none is ever
 * taken away. The log, releases, pins and plans of a folder stay as they are.
 */
@Service
public final class WindowSchedules {
    /** What is told when a folder's openings change. */
    public static final String TOPIC = "openings";

    private final DSLContext db;
    private final Facades facades;
    private final Openings openings;
    private final ScheduledOpenings scheduled;
    private final OpeningStates states;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final Told told;

    /** Who hears of it. */
    @Service
    record Told(News news, History history) {}

    WindowSchedules(
            DSLContext db,
            Facades facades,
            Openings openings,
            ScheduledOpenings scheduled,
            OpeningStates states,
            TransactionTemplate transaction,
            Clock clock,
            Told told) {
        this.db = db;
        this.facades = facades;
        this.openings = openings;
        this.scheduled = scheduled;
        this.states = states;
        this.transaction = transaction;
        this.clock = clock;
        this.told = told;
    }

    /** The openings at which anything was ever marked, here or before the folder was brought in, at the person's sites. */
    public Set<OpeningId> begun(Person who, FolderId folder) {
        return begun(states.of(who, folder));
    }

    /** Takes it in whole, or nothing of it. */
    public ScheduleResult take(Person who, FolderId folder, ScheduleTaking asked) {
        who.demand(Operation.IMPORT_FOLDER, asked.site());
        Optional<Saying> wrong = asked.problem();
        if (wrong.isPresent()) return new Refused(wrong.get());
        return transaction.execute(_ -> {
            // one schedule at a time in a folder
            db.selectFrom(JOB_FOLDER)
                    .where(JOB_FOLDER.ID.eq(folder.value()))
                    .forUpdate()
                    .fetch();
            Optional<ScheduleResult> against = against(folder, asked);
            return against.isPresent() ? against.get() : store(who, folder, asked);
        });
    }

    private Optional<ScheduleResult> against(FolderId folder, ScheduleTaking asked) {
        List<Opening> now =
                openings.locked(folder, asked.was().stream().map(Opening::id).toList());
        Set<OpeningId> moved = asked.was().stream()
                .filter(was -> now.stream().noneMatch(was::designedLike))
                .map(Opening::id)
                .collect(Collectors.toSet());
        Set<OpeningId> begun = begun(states.states(folder));
        asked.agreed().forEach(begun::remove);
        asked.changed().stream().map(Opening::id).filter(begun::contains).forEach(moved::add);
        if (!moved.isEmpty()) return Optional.of(new ChangedMeanwhile(some(moved)));
        return refusal(folder, asked);
    }

    private Optional<ScheduleResult> refusal(FolderId folder, ScheduleTaking asked) {
        Set<OpeningId> there = openings.of(folder).stream().map(Opening::id).collect(Collectors.toSet());
        Set<OpeningId> twice = asked.added().stream()
                .map(Opening::id)
                .filter(id -> !there.add(id))
                .collect(Collectors.toSet());
        if (!twice.isEmpty()) return Optional.of(new ChangedMeanwhile(some(twice)));
        for (int i = 0; i < asked.changed().size(); i++)
            if (asked.agreed().contains(asked.changed().get(i).id())
                    && asked.changed().get(i).method() != asked.was().get(i).method())
                return Optional.of(new Refused(Saying.of(
                        "work has begun at opening {0}; its method cannot change",
                        asked.changed().get(i).id())));
        var walls = facades.of(folder).stream().map(Facade::id).collect(Collectors.toSet());
        return java.util.stream.Stream.concat(asked.added().stream(), asked.changed().stream())
                .filter(opening -> !walls.contains(opening.facade()))
                .findFirst()
                .map(opening -> new Refused(
                        Saying.of("the job folder has no facade {0}; accepted: one of facades.csv", opening.facade())));
    }

    private ScheduleResult store(Person who, FolderId folder, ScheduleTaking asked) {
        var taking = new Taking(folder, asked.site(), asked.file(), who.id(), who.name(), clock.instant());
        scheduled.take(taking, asked.added(), asked.was(), asked.changed());
        scheduled.note(folder, asked.notes());
        int added = asked.added().size();
        int changed = asked.changed().size();
        told.history()
                .note(
                        who,
                        asked.site(),
                        "took in window schedule \"%s\": %d openings new, %d changed"
                                .formatted(asked.file(), added, changed));
        told.news().tell(new NewsItem(TOPIC, folder.value(), asked.site().value(), asked.file()));
        return new Taken(added, changed);
    }

    private static Set<OpeningId> begun(List<OpeningState> states) {
        return states.stream()
                .filter(state -> state.lastMark() != null
                        || state.opening().done() > 0
                        || !state.opening().finished().isEmpty())
                .map(state -> state.opening().id())
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static Saying some(Set<OpeningId> ids) {
        String first = ids.stream().sorted().limit(5).map(OpeningId::value).collect(Collectors.joining(", "));
        return ids.size() > 5 ? Saying.of("{0} and {1} more", first, ids.size() - 5) : Saying.asItIs(first);
    }
}
