package drylap.ui.shell;

import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.UIScope;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRuns;
import drylap.planning.Publications;
import drylap.planning.PublishResult;
import drylap.planning.RunState;
import drylap.planning.StoredFolder;
import drylap.platform.Subscription;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChoice;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The job folder that lies on the table of one page: the newest, until a person chooses another. */
@UIScope
@SpringComponent
public class Desk {
    /** Long enough for a good first plan of a week's folder. */
    public static final long FIRST_PLAN_SECONDS = 30;

    private static final String CHOSEN = "drylap.folder";

    private final JobFolders folders;
    private final ShownFolders shownFolders;
    private final SharedFolders shared;
    private final Publications publications;
    private final PlanRuns runs;
    private final SignedIn signedIn;
    private boolean lookAtPublished;
    private @Nullable FolderShown shown;
    private @Nullable Person shownTo;
    private Runnable turned = () -> {};

    Desk(
            JobFolders folders,
            ShownFolders shownFolders,
            SharedFolders shared,
            Publications publications,
            PlanRuns runs,
            SignedIn signedIn) {
        this.folders = folders;
        this.shownFolders = shownFolders;
        this.shared = shared;
        this.publications = publications;
        this.runs = runs;
        this.signedIn = signedIn;
    }

    /** Whether anything may lie on this person's table: crews have screens of their own. */
    boolean isTheirs() {
        return signedIn.find().filter(who -> who.may(Operation.SEE_FOLDERS)).isPresent();
    }

    public List<StoredFolder> folders() {
        return shownFolders.list(signedIn.person());
    }

    /** What lies there for whoever asks; nothing where no folder was ever imported. */
    public Optional<FolderShown> shown() {
        if (!isTheirs()) return Optional.empty();
        if (shown == null || !signedIn.person().equals(shownTo)) reload();
        return Optional.ofNullable(shown);
    }

    /** A folder of one's own: the one on the table, or else the newest; the invented sample is none. */
    public Optional<FolderShown> own() {
        Optional<FolderShown> here = shown().filter(now -> !now.stored().sample());
        if (here.isPresent() || !isTheirs()) return here;
        return folders().stream().filter(one -> !one.sample()).findFirst().map(this::load);
    }

    /** Puts another folder on the table. */
    public void open(FolderId id) {
        VaadinSession.getCurrent().setAttribute(CHOSEN, id);
        shown = null;
        turned.run();
    }

    /** Stores a folder, puts it on the table and begins to plan it. */
    public FolderId takeIn(String name, JobFolder folder) {
        FolderId id = folders.save(signedIn.person(), name, folder);
        plan(id, FIRST_PLAN_SECONDS);
        open(id);
        return id;
    }

    /** Plans the folder on the table afresh. */
    public void plan(long seconds) {
        shown().ifPresent(now -> plan(now.stored().id(), seconds));
    }

    public void stop() {
        shown().ifPresent(now -> runs.stop(signedIn.person(), now.stored().id()));
    }

    /** The published plan instead of a newer proposal, or the other way round. */
    public void lookAtPublished(boolean look) {
        lookAtPublished = look;
        refresh();
    }

    /** Publishes the proposal in the place of the plan that was published when the person looked. */
    public PublishResult publish(PlanChoice choice) {
        var seen = choice.publication();
        return publications.publish(
                signedIn.person(),
                shown().orElseThrow().stored().id(),
                choice.proposal().orElseThrow().id(),
                seen == null ? null : seen.id());
    }

    /** Fetches everything on the table anew and shows it. */
    public void refresh() {
        shown = null;
        turned.run();
    }

    /** Fetches the folder on the table as it stands by now, and its plans. */
    void reload() {
        reload(this::load);
    }

    /** What lies there may have changed while no screen showed it: it is fetched when one does. */
    void forget() {
        shown = null;
    }

    /** The same after news, once for all pages that are told of them. */
    void reloadTold() {
        reload(stored -> shared.told(signedIn.person(), stored, lookAtPublished));
    }

    private void reload(Function<StoredFolder, FolderShown> load) {
        shownTo = signedIn.person();
        List<StoredFolder> all = folders();
        Object chosen = VaadinSession.getCurrent().getAttribute(CHOSEN);
        shown = all.stream()
                .filter(stored -> stored.id().equals(chosen))
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(load)
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
        lookAtPublished = false;
        runs.propose(signedIn.person(), id, Duration.ofSeconds(seconds));
    }

    private FolderShown load(StoredFolder stored) {
        return shared.own(signedIn.person(), stored, lookAtPublished);
    }
}
