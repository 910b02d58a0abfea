package drylap.planning;

import drylap.kernel.FolderId;

/** Thrown where a job folder is asked for that the database does not hold. */
public final class UnknownFolder extends RuntimeException {
    public UnknownFolder(FolderId id) {
        super("there is no job folder number %d".formatted(id.value()));
    }
}
