package drylap.progress;

/** What became of a photo. */
public sealed interface PhotoResult {
    record Stored(Photo photo) implements PhotoResult {}

    /** The same photo came before. */
    record AlreadyStored(Photo photo) implements PhotoResult {}

    record Refused(Why why, String words) implements PhotoResult {
        /** What is wrong with it. */
        public enum Why {
            TOO_LARGE,
            NO_PHOTO,
            KEY_TAKEN
        }
    }
}
