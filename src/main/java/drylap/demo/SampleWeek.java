package drylap.demo;

import drylap.calendars.ForgottenCrews;
import drylap.forecasts.ForgottenSites;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.StoredFolder;
import drylap.platform.BackgroundWork;
import drylap.platform.JobId;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.SampleLog;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.People;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Loads the invented week at a wish, and takes exactly that away again, with all that refers to it. */
@Service
public final class SampleWeek {
    private static final String TOPIC = "sample";
    /** A planner that is told to stop does so within a second or two. */
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final JobFolders folders;
    private final DemoFolder folder;
    private final DemoPeople demoPeople;
    private final SampleTies ties;
    private final Parts parts;
    private final Told told;
    private final TransactionTemplate transaction;

    /** Whose rows go with a sample. */
    @Service
    record Parts(SampleLog log, ForgottenCrews crews, ForgottenSites sites, People people, BackgroundWork work) {}

    /** Who hears of it. */
    @Service
    record Told(History history, News news) {
        void say(Person who, String what) {
            history.note(who, null, what);
            news.tell(new NewsItem(TOPIC, 0, null, ""));
        }
    }

    SampleWeek(
            JobFolders folders,
            DemoFolder folder,
            DemoPeople demoPeople,
            SampleTies ties,
            Parts parts,
            Told told,
            TransactionTemplate transaction) {
        this.folders = folders;
        this.folder = folder;
        this.demoPeople = demoPeople;
        this.ties = ties;
        this.parts = parts;
        this.told = told;
        this.transaction = transaction;
    }

    public boolean isThere() {
        return sample().isPresent();
    }

    /** Only where there is no job folder, so that nothing invented stands beside what is not. */
    public boolean mayLoad() {
        return folders.list().isEmpty();
    }

    /** Its people may not sign in, since everybody knows their passwords. */
    public synchronized SampleResult load(Person who) {
        who.demand(Operation.CHANGE_SAMPLE);
        if (!mayLoad())
            return new SampleResult.Refused(List.of(
                    Saying.of("There is a job folder already; the sample is loaded into an empty database only.")));
        try {
            if (parts.people().everyDemo().isEmpty()) demoPeople.addSignedOff();
            folder.bringIn();
        } catch (RuntimeException broken) {
            // each part of it is stored by itself; what is there of it goes again
            remove(who);
            throw broken;
        }
        told.say(who, "loaded the invented sample");
        return new SampleResult.Done();
    }

    /** Nothing goes where something hangs on it that is not invented. */
    public synchronized SampleResult remove(Person who) {
        who.demand(Operation.CHANGE_SAMPLE);
        Optional<FolderId> there = sample();
        if (there.isEmpty())
            return new SampleResult.Refused(List.of(Saying.of("There is no sample; nothing is left to take away.")));
        List<JobId> jobs = new ArrayList<>(ties.jobs(there.get()));
        List<Saying> own = ties.own(there.get());
        if (!own.isEmpty()) return new SampleResult.Refused(own);
        if (!parts.work().letGo(jobs, PATIENCE))
            return new SampleResult.Refused(
                    List.of(Saying.of("Something is still being reckoned for it. Try again in a minute.")));
        return transaction.execute(_ -> {
            ties.lock(there.get());
            List<Saying> meanwhile = ties.own(there.get());
            if (!meanwhile.isEmpty()) return new SampleResult.Refused(meanwhile);
            remove(who, there.get(), jobs);
            return new SampleResult.Done();
        });
    }

    private void remove(Person who, FolderId id, List<JobId> jobs) {
        List<SiteId> sites = ties.sitesOnlyOf(id);
        List<CrewId> crews = ties.crewsOnlyOf(id);
        jobs.addAll(parts.sites().fetches(sites));
        parts.log().remove(id);
        folders.removeSample(id);
        parts.sites().forget(sites);
        parts.crews().forget(crews);
        parts.work().remove(jobs);
        parts.people().removeDemo();
        told.say(who, "took the invented sample away");
    }

    private Optional<FolderId> sample() {
        return folders.list().stream()
                .filter(StoredFolder::sample)
                .map(StoredFolder::id)
                .findFirst();
    }
}
