package drylap.pictures;

import drylap.speech.Saying;
import org.jspecify.annotations.Nullable;

/** Bytes that are no picture which can be kept; the saying tells why and what would be. */
public final class BadPicture extends Exception {
    private final transient Saying saying;
    private final boolean tooLarge;

    private BadPicture(Saying saying, boolean tooLarge, @Nullable Exception cause) {
        super(saying.words(), cause);
        this.saying = saying;
        this.tooLarge = tooLarge;
    }

    static BadPicture none(Saying saying) {
        return new BadPicture(saying, false, null);
    }

    /** One that begins as what it is not. */
    static BadPicture broken(MediaType type, Exception cause) {
        return new BadPicture(
                Saying.of(
                        "the file begins as {0} but cannot be read; accepted: JPEG, PNG, WebP. Where it breaks: {1}",
                        type.name(), Broken.where(cause)),
                false,
                cause);
    }

    static BadPicture tooLarge(int width, int height) {
        return new BadPicture(
                Saying.of(
                        "the photo has {0} x {1} pixels; accepted: up to {2} million in all, and no side longer than {3}",
                        width, height, Pictures.MOST_PIXELS / 1_000_000, Pictures.LONGEST_SIDE_PX),
                true,
                null);
    }

    /** The message, for whoever sent the picture. */
    public Saying saying() {
        return saying;
    }

    public boolean tooLarge() {
        return tooLarge;
    }
}
