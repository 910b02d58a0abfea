package drylap.pictures;

import drylap.speech.Saying;
import java.io.IOException;
import java.util.concurrent.Semaphore;

/** Looks at pictures. */
public final class Pictures {
    /** Large enough to judge a lap on paper: some 240 dots per inch at 85 mm. */
    public static final int THUMBNAIL_PX = 800;

    /** Cameras of phones make up to 50 million; more in a file of few bytes is made to exhaust whoever decodes it. */
    static final long MOST_PIXELS = 60_000_000;

    static final int LONGEST_SIDE_PX = 20_000;

    /** Decoding takes memory; whoever comes third waits. */
    private static final Semaphore DECODING = new Semaphore(2);

    private Pictures() {}

    /**
     * Takes out what is not the picture, then decodes the rest as proof that it is one.
     *
     * @param keepPlace leave in what the camera wrote as Exif, the place among it, but for who took it; else only which side is up stays
     * @throws BadPicture where the bytes are of no known kind, cut off, too large once decoded, or moving
     */
    public static Picture lookAt(byte[] sent, boolean keepPlace) throws BadPicture {
        var type = MediaType.of(sent)
                .orElseThrow(() ->
                        BadPicture.none(Saying.of("the file is no photo that is known; accepted: JPEG, PNG, WebP")));
        try {
            var parts = parts(type, sent);
            var kept = parts.written(keepPlace);
            DECODING.acquireUninterruptibly();
            try {
                return seen(type, kept, parts.orientation());
            } finally {
                DECODING.release();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException unfit) {
            throw BadPicture.broken(type, unfit);
        }
    }

    private static PictureParts parts(MediaType type, byte[] sent) throws IOException {
        return switch (type) {
            case JPEG -> JpegParts.of(sent);
            case PNG -> PngParts.of(sent);
            case WEBP -> WebpParts.of(sent);
        };
    }

    private static Picture seen(MediaType type, byte[] kept, Orientation orientation) throws IOException, BadPicture {
        var decoded = Decoded.of(type, kept);
        var upright = orientation.upright(decoded.small());
        boolean turned = orientation.swapsSides();
        return new Picture(
                type,
                kept,
                turned ? decoded.height() : decoded.width(),
                turned ? decoded.width() : decoded.height(),
                Thumbnail.of(upright, THUMBNAIL_PX));
    }
}
