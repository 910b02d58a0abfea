package drylap.api.v1;

import drylap.api.NotFound;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.planning.Publications;
import drylap.planning.StoredFolder;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Sites;
import java.util.List;
import org.springframework.stereotype.Component;

/** The job folders that someone may look into: with a site of theirs; whoever keeps no folders, the one in work. */
@Component
final class FolderDoor {
    private final JobFolders folders;
    private final Publications publications;
    private final Sites sites;

    FolderDoor(JobFolders folders, Publications publications, Sites sites) {
        this.folders = folders;
        this.publications = publications;
        this.sites = sites;
    }

    List<StoredFolder> all(Person who) {
        return folders.list().stream().filter(one -> sees(who, one.id())).toList();
    }

    boolean inWork(FolderId folder) {
        return publications.inWork().filter(folder::equals).isPresent();
    }

    /** @throws NotFound where it is not theirs, is not there, or is no number */
    FolderId open(Person who, String folder) {
        if (!folder.matches("\\d{1,18}")) throw new NotFound();
        var id = new FolderId(Long.parseLong(folder));
        if (!sees(who, id)) throw new NotFound();
        return id;
    }

    private boolean sees(Person who, FolderId id) {
        return who.may(Operation.SEE_OPENINGS)
                && (who.may(Operation.SEE_FOLDERS) || inWork(id))
                && !sites.within(id, who.reach()).isEmpty();
    }
}
