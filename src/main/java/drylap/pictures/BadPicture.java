package drylap.pictures;

import drylap.speech.Saying;

/** Bytes that are no picture which can be kept; the saying tells why and what would be. */
public final class BadPicture extends Exception {
    private final transient Saying saying;
    private final boolean tooLarge;

    private BadPicture(Saying saying, boolean tooLarge) {
        super(saying.words());
        this.saying = saying;
        this.tooLarge = tooLarge;
    }

    static BadPicture none(Saying saying) {
        return new BadPicture(saying, false);
    }

    static BadPicture tooLarge(int width, int height) {
        return new BadPicture(
                Saying.of(
                        "the photo has {0} x {1} pixels; accepted: up to {2} million in all, and no side longer than {3}",
                        width, height, Pictures.MOST_PIXELS / 1_000_000, Pictures.LONGEST_SIDE_PX),
                true);
    }

    /** The message, for whoever sent the picture. */
    public Saying saying() {
        return saying;
    }

    public boolean tooLarge() {
        return tooLarge;
    }
}
