package drylap.pictures;

import drylap.speech.Saying;
import java.io.IOException;

/** Where a file breaks that begins as a picture. */
final class Broken extends IOException {
    private final transient Saying where;

    Broken(Saying where) {
        super(where.words());
        this.where = where;
    }

    /** For whoever sent the file, in their language; what a library found is left to the log, since it knows one language only. */
    static Saying where(Exception unfit) {
        return unfit instanceof Broken broken ? broken.where : Saying.of("its picture data cannot be decoded");
    }
}
