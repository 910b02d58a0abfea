package drylap.pictures;

/** Bytes that are no picture which can be kept; the message says why and what would be. */
public final class BadPicture extends Exception {
    private final boolean tooLarge;

    private BadPicture(String words, boolean tooLarge) {
        super(words);
        this.tooLarge = tooLarge;
    }

    static BadPicture none(String words) {
        return new BadPicture("%s; accepted: JPEG, PNG, WebP".formatted(words), false);
    }

    static BadPicture tooLarge(int width, int height) {
        return new BadPicture(
                "the photo has %d x %d pixels; accepted: up to %d million in all, and no side longer than %d"
                        .formatted(width, height, Pictures.MOST_PIXELS / 1_000_000, Pictures.LONGEST_SIDE_PX),
                true);
    }

    public boolean tooLarge() {
        return tooLarge;
    }
}
