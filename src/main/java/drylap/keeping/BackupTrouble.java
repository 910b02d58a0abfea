package drylap.keeping;

/** Thrown where a backup cannot be written or taken back; says what is wrong and what would be accepted. */
public final class BackupTrouble extends Exception {
    private static final long serialVersionUID = 1;

    BackupTrouble(String what, String accepted) {
        super(what + "; " + accepted);
    }
}
