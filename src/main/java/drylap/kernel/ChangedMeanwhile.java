package drylap.kernel;

/** Someone else was quicker: what was to be changed is no longer as it was seen. Nothing was changed. */
public final class ChangedMeanwhile extends RuntimeException {
    public ChangedMeanwhile(String what) {
        super(what + " was changed since you looked at it");
    }
}
