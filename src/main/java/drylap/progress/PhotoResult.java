package drylap.progress;

import drylap.speech.Saying;

/** What became of a photo. */
public sealed interface PhotoResult {
    record Stored(Photo photo) implements PhotoResult {}

    /** The same photo came before. */
    record AlreadyStored(Photo photo) implements PhotoResult {}

    record Refused(Why why, Saying saying) implements PhotoResult {
        public String words() {
            return saying.words();
        }

        /** What is wrong with it. */
        public enum Why {
            TOO_LARGE,
            NO_PHOTO,
            KEY_TAKEN,
            /** Nothing, but its sender has sent as many as one may within a day; later it is taken. */
            MANY_TODAY
        }
    }
}
