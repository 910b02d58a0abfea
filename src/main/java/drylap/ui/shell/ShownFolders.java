package drylap.ui.shell;

import drylap.kernel.FolderId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.Publication;
import drylap.planning.Publications;
import drylap.planning.StoredFolder;
import drylap.planning.StoredPlan;
import drylap.security.Person;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChoice;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Fetches job folders as they stand by now, with their plans, as far as a person may see them. */
@Component
public class ShownFolders {
    private final JobFolders folders;
    private final CurrentFolders current;
    private final Plans plans;
    private final Publications publications;

    ShownFolders(JobFolders folders, CurrentFolders current, Plans plans, Publications publications) {
        this.folders = folders;
        this.current = current;
        this.plans = plans;
        this.publications = publications;
    }

    List<StoredFolder> list(Person who) {
        return folders.list(who);
    }

    /** Empty where there is no such folder for them. */
    public Optional<FolderShown> find(Person who, FolderId id, boolean lookAtPublished) {
        return list(who).stream()
                .filter(stored -> stored.id().equals(id))
                .findFirst()
                .map(stored -> load(who, stored, lookAtPublished));
    }

    FolderShown load(Person who, StoredFolder stored, boolean lookAtPublished) {
        var id = stored.id();
        var publication = publications.latest(id).orElse(null);
        var newest = plans.latest(who, id).orElse(null);
        return new FolderShown(
                stored,
                current.load(who, id),
                new PlanChoice(newest, publication, published(who, publication, newest), lookAtPublished));
    }

    private @Nullable Plan published(Person who, @Nullable Publication publication, @Nullable StoredPlan newest) {
        if (publication == null) return null;
        if (newest != null && newest.id().equals(publication.plan())) return newest.plan();
        return plans.load(who, publication.plan()).plan();
    }
}
