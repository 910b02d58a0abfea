package drylap.ui.shell;

import drylap.planning.StoredFolder;
import drylap.platform.News;
import drylap.security.Person;
import drylap.ui.drawn.FolderShown;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/** Job folders on the tables of open pages. */
@Component
class SharedFolders {
    private final ShownFolders folders;
    private final Shared<FolderShown> shared;

    private record Table(StoredFolder stored, boolean published) {}

    @Autowired
    SharedFolders(ShownFolders folders, News news) {
        this(folders, new Shared<>(news, FolderShown::orNewer));
    }

    SharedFolders(ShownFolders folders, News news, Duration kept) {
        this(folders, new Shared<>(news, FolderShown::orNewer, kept));
    }

    private SharedFolders(ShownFolders folders, Shared<FolderShown> shared) {
        this.folders = folders;
        this.shared = shared;
    }

    FolderShown own(Person who, StoredFolder stored, boolean published) {
        return shared.own(sight(who, stored, published), () -> folders.load(who, stored, published));
    }

    FolderShown told(Person who, StoredFolder stored, boolean published) {
        return shared.told(sight(who, stored, published), () -> folders.load(who, stored, published));
    }

    private static Sight sight(Person who, StoredFolder stored, boolean published) {
        return Sight.of(who, new Table(stored, published));
    }
}
