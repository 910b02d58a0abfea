package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;

import drylap.kernel.FolderId;
import drylap.platform.Asker;
import drylap.platform.BackgroundWork;
import drylap.platform.JobId;
import drylap.platform.Subscription;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Planning in the background: it outlives the page that asked for it and the process that does it. */
@Service
public final class PlanRuns {
    private static final Duration ROUNDED_TO = Duration.ofMinutes(5);

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final BackgroundWork work;
    private final PlanningRuns runs;
    private final RunWaypoints waypoints;
    private final RunWatch watch;
    private final Publications publications;
    private final JobFolders folders;
    private final Clock clock;

    PlanRuns(
            DSLContext db,
            TransactionTemplate transaction,
            BackgroundWork work,
            PlanningRuns runs,
            RunWaypoints waypoints,
            RunWatch watch,
            Publications publications,
            JobFolders folders,
            Clock clock) {
        this.db = db;
        this.transaction = transaction;
        this.work = work;
        this.runs = runs;
        this.waypoints = waypoints;
        this.watch = watch;
        this.publications = publications;
        this.folders = folders;
        this.clock = clock;
    }

    /**
     * Queues a run. The newest request counts: an earlier run of the folder that is still under way ends without a word
     * more; plans that it has saved stay.
     *
     * @throws UnknownFolder where there is no such folder
     */
    public RunId request(FolderId folder, PlanRequest request) {
        return request(Asker.nobody(folder), folder, request);
    }

    private RunId request(Asker asker, FolderId folder, PlanRequest request) {
        return transaction.execute(_ -> {
            lock(folder);
            runs.underWay(folder).forEach(work::withdraw);
            waypoints.forgetAll(folder);
            JobId job = work.ask(PlanningJob.KIND, Long.toString(folder.value()), asker);
            runs.open(job, folder, request);
            return new RunId(job.value());
        });
    }

    /**
     * Queues a run for a person: from now on, or from the first shift where that is later, over every site of the folder.
     *
     * @throws UnknownFolder where there is no such folder
     */
    public RunId propose(Person who, FolderId folder, Duration time) {
        PlanRequest request = asked(who, folder, time);
        return request(Asker.of(who.id(), folder), folder, request);
    }

    /** What such a run is asked; others who plan for a person without keeping the plan ask the same. */
    public PlanRequest asked(Person who, FolderId folder, Duration time) {
        demandProposal(who, folder);
        return new PlanRequest(from(folder), time, null, 1).besideOthers();
    }

    /** @throws NotAllowed where the person may not have the folder planned at every site of it */
    public void demandProposal(Person who, FolderId folder) {
        who.demand(Operation.PROPOSE_PLAN, publications.sitesOf(folder));
    }

    /** As {@link #demandProposal}, as a question. */
    public boolean mayPropose(Person who, FolderId folder) {
        return who.may(Operation.PROPOSE_PLAN) && who.reach().coversAll(publications.sitesOf(folder));
    }

    /** Asks the folder's run to end now, for a person. */
    public void stop(Person who, FolderId folder) {
        demandProposal(who, folder);
        stop(folder);
    }

    /**
     * What is past is not planned; a new plan begins a little later, so that crews can hear of it. A folder whose shifts are all
     * past is planned from its first one: somebody wants to see how it would have gone.
     */
    private @Nullable Instant from(FolderId folder) {
        long step = ROUNDED_TO.toSeconds();
        Instant soon = Instant.ofEpochSecond(Math.ceilDiv(clock.instant().getEpochSecond(), step) * step);
        return folders.shifts(folder)
                        .filter(all -> all.from().isBefore(soon) && all.until().isAfter(soon))
                        .isPresent()
                ? soon
                : null;
    }

    /** Asks the folder's run to end now; its best plan so far is kept. Nothing happens where none is under way. */
    public void stop(FolderId folder) {
        runs.underWay(folder).forEach(work::stop);
    }

    /** Whether a run of the folder has been asked for and has not ended. */
    public boolean underWay(FolderId folder) {
        return !runs.underWay(folder).isEmpty();
    }

    /** The folder's newest run. */
    public Optional<RunState> state(FolderId folder) {
        return Optional.ofNullable(runs.newest(Set.of(folder)).get(folder));
    }

    /**
     * Tells the listener, on a thread of its own, how the folder's newest run stands: now, and then at most four times a
     * second when something changed, whichever node does the work. A listener that throws is told no more.
     */
    public Subscription watch(FolderId folder, Consumer<RunState> listener) {
        return watch.add(folder, listener);
    }

    /** Two requests at once take turns, so that the later one sees the earlier. */
    private void lock(FolderId folder) {
        boolean there = db.selectFrom(JOB_FOLDER)
                .where(JOB_FOLDER.ID.eq(folder.value()))
                .forUpdate()
                .fetchOptional()
                .isPresent();
        if (!there) throw new UnknownFolder(folder);
    }
}
