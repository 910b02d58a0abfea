package drylap.api;

import drylap.progress.PhotoResult;

/** A photo that is not kept. */
final class PhotoRefused extends RuntimeException {
    private final transient PhotoResult.Refused refused;

    PhotoRefused(PhotoResult.Refused refused) {
        super(refused.words());
        this.refused = refused;
    }

    PhotoResult.Refused refused() {
        return refused;
    }
}
