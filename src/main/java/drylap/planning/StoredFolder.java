package drylap.planning;

import drylap.kernel.FolderId;
import java.time.Instant;

/**
 * A job folder in the database, as a list shows it.
 *
 * @param sample the invented one that Drylap brings along
 */
public record StoredFolder(FolderId id, String name, Instant importedAt, int sites, int openings, boolean sample) {
    public StoredFolder(FolderId id, String name, Instant importedAt, int sites, int openings) {
        this(id, name, importedAt, sites, openings, false);
    }
}
