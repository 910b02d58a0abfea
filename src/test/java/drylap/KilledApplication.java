package drylap;

import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolderFixture;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;

/** The real application, given long work as soon as it is ready: for tests that kill it in the middle. */
public final class KilledApplication {
    static final JobFolder IMPORTED = JobFolderFixture.of(9, 11, 2_000, 2_000);

    private final Environment environment;
    private final JobFolders folders;
    private final PlanRuns runs;

    KilledApplication(Environment environment, JobFolders folders, PlanRuns runs) {
        this.environment = environment;
        this.folders = folders;
        this.runs = runs;
    }

    public static void main(String[] args) {
        new SpringApplicationBuilder(Drylap.class, KilledApplication.class).run(args);
    }

    @Order(2)
    @EventListener(ApplicationReadyEvent.class)
    void work() {
        switch (environment.getProperty("work", "")) {
            case "import" -> importForEver();
            case "plan" -> plan();
            default -> {}
        }
    }

    private void importForEver() {
        for (int i = 1; ; i++) {
            folders.save("import " + i, IMPORTED);
            System.out.println("imported " + i);
        }
    }

    private void plan() {
        FolderId id = folders.save("to plan", GeneratedFolder.of(40, 2, 1));
        runs.watch(
                id,
                state -> System.out.println(
                        "run " + state.status() + " " + state.progress().planned()));
        runs.request(id, PlanRequest.seconds(1_800));
    }
}
