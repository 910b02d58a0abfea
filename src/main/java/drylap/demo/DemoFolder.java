package drylap.demo;

import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.intake.ShiftedFolder;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.security.History;
import drylap.security.People;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Loads the sample into a database without any job folder, moved to the current week and begun, and asks for a new proposal. */
@Component
class DemoFolder {
    private static final Logger LOG = LoggerFactory.getLogger(DemoFolder.class);
    private static final Duration TIME = Duration.ofSeconds(20);
    /** What is loaded at a wish where nothing is loaded by itself. */
    private static final String STANDARD = "sample-data/harbour-week";

    private final String sample;
    private final JobFolders folders;
    private final PlanRuns runs;
    private final DemoWeek week;
    private final Newness newness;
    private final Clock clock;

    /** Whether a database is one that nobody has begun to use. */
    @Component
    record Newness(People people, History history) {
        /** Whoever took the sample away, or has people of their own, does not want it to come by itself. */
        boolean isNew() {
            return history.isEmpty() && people.own().isEmpty();
        }
    }

    DemoFolder(
            @Value("${drylap.demo:}") String sample,
            JobFolders folders,
            PlanRuns runs,
            DemoWeek week,
            Newness newness,
            Clock clock) {
        this.newness = newness;
        this.sample = sample;
        this.folders = folders;
        this.runs = runs;
        this.week = week;
        this.clock = clock;
    }

    @Order(3)
    @EventListener(ApplicationReadyEvent.class)
    void load() {
        if (!sample.isBlank() && folders.list().isEmpty() && newness.isNew()) bringIn();
    }

    void bringIn() {
        switch (FolderReader.read(FolderSource.classpath(path()))) {
            case FolderReading.Read read -> keep(read.folder());
            case FolderReading.Refused refused ->
                LOG.error("The sample {} cannot be read:\n{}", path(), refused.text());
        }
    }

    private void keep(JobFolder folder) {
        LocalDate monday = LocalDate.now(
                        clock.withZone(folder.sites().getFirst().zone()))
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        JobFolder thisWeek = ShiftedFolder.toWeekOf(folder, monday);
        FolderId id = folders.saveSample(name(), thisWeek);
        week.begin(id, thisWeek);
        runs.request(id, request());
    }

    private PlanRequest request() {
        return new PlanRequest(clock.instant(), TIME, null, 1);
    }

    private String path() {
        return sample.isBlank() ? STANDARD : sample;
    }

    private String name() {
        return path().substring(path().lastIndexOf('/') + 1);
    }
}
