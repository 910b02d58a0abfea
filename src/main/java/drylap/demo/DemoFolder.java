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
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Loads the sample into a database without any job folder, moved to the current week, and asks for a plan of it. */
@Component
class DemoFolder {
    private static final Logger LOG = LoggerFactory.getLogger(DemoFolder.class);
    private static final PlanRequest REQUEST = PlanRequest.seconds(20);

    private final String sample;
    private final JobFolders folders;
    private final PlanRuns runs;
    private final Clock clock;

    DemoFolder(@Value("${drylap.demo:}") String sample, JobFolders folders, PlanRuns runs, Clock clock) {
        this.sample = sample;
        this.folders = folders;
        this.runs = runs;
        this.clock = clock;
    }

    @Order(1)
    @EventListener(ApplicationReadyEvent.class)
    void load() {
        if (sample.isBlank() || !folders.list().isEmpty()) return;
        switch (FolderReader.read(FolderSource.classpath(sample))) {
            case FolderReading.Read read -> keep(read.folder());
            case FolderReading.Refused refused ->
                LOG.error("The sample {} cannot be read:\n{}", sample, refused.text());
        }
    }

    private void keep(JobFolder folder) {
        LocalDate monday = LocalDate.now(
                        clock.withZone(folder.sites().getFirst().zone()))
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        FolderId id = folders.save(name(), ShiftedFolder.toWeekOf(folder, monday));
        runs.request(id, REQUEST);
    }

    private String name() {
        return sample.substring(sample.lastIndexOf('/') + 1);
    }
}
