package drylap.planning;

import drylap.kernel.FolderId;
import java.time.Instant;

/** A job folder in the database, as a list shows it. */
public record StoredFolder(FolderId id, String name, Instant importedAt, int sites, int openings) {}
