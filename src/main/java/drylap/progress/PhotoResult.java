package drylap.progress;

/** What became of a photo. */
public sealed interface PhotoResult {
    record Stored(Photo photo) implements PhotoResult {}

    /** The same photo came before. */
    record AlreadyStored(Photo photo) implements PhotoResult {}

    record Refused(String words) implements PhotoResult {}
}
