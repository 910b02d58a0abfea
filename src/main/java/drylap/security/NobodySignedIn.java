package drylap.security;

/** Nobody is signed in where somebody must be, or whoever was has been signed out since. */
public final class NobodySignedIn extends IllegalStateException {
    public NobodySignedIn() {
        super("nobody is signed in");
    }
}
