package drylap.ui.shell;

import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.UIScope;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.planning.Plans;
import drylap.planning.RunState;
import drylap.planning.StoredFolder;
import drylap.platform.Subscription;
import drylap.ui.drawn.FolderShown;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The job folder that lies on the table of one page: the newest, until a person chooses another. */
@UIScope
@SpringComponent
public class Desk {
    /** Long enough for a good first plan of a week's folder. */
    public static final long FIRST_PLAN_SECONDS = 30;

    private static final String CHOSEN = "drylap.folder";

    private final JobFolders folders;
    private final Plans plans;
    private final PlanRuns runs;
    private @Nullable FolderShown shown;
    private long secondsAsked = FIRST_PLAN_SECONDS;
    private Runnable turned = () -> {};

    Desk(JobFolders folders, Plans plans, PlanRuns runs) {
        this.folders = folders;
        this.plans = plans;
        this.runs = runs;
    }

    public List<StoredFolder> folders() {
        return folders.list();
    }

    /** Nothing where no folder was ever imported. */
    public Optional<FolderShown> shown() {
        if (shown == null) reload();
        return Optional.ofNullable(shown);
    }

    /** Puts another folder on the table. */
    public void open(FolderId id) {
        VaadinSession.getCurrent().setAttribute(CHOSEN, id);
        shown = null;
        turned.run();
    }

    /** Stores a folder, puts it on the table and begins to plan it. */
    public FolderId takeIn(String name, JobFolder folder) {
        FolderId id = folders.save(name, folder);
        plan(id, FIRST_PLAN_SECONDS);
        open(id);
        return id;
    }

    /** Plans the folder on the table afresh. */
    public void plan(long seconds) {
        shown().ifPresent(now -> plan(now.stored().id(), seconds));
    }

    public void stop() {
        shown().ifPresent(now -> runs.stop(now.stored().id()));
    }

    public long secondsAsked() {
        return secondsAsked;
    }

    /** Fetches the newest plan of the folder on the table. */
    void reload() {
        List<StoredFolder> all = folders.list();
        Object chosen = VaadinSession.getCurrent().getAttribute(CHOSEN);
        shown = all.stream()
                .filter(stored -> stored.id().equals(chosen))
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(this::load)
                .orElse(null);
    }

    Optional<Subscription> watch(Consumer<RunState> listener) {
        return shown().map(now -> runs.watch(now.stored().id(), listener));
    }

    /** The shell alone listens here. */
    void onTurned(Runnable listener) {
        turned = listener;
    }

    private void plan(FolderId id, long seconds) {
        secondsAsked = seconds;
        runs.request(id, PlanRequest.seconds(seconds));
    }

    private FolderShown load(StoredFolder stored) {
        return new FolderShown(
                stored, folders.load(stored.id()), plans.latest(stored.id()).orElse(null));
    }
}
