package drylap.pictures;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/**
 * Which side of a stored picture is up: the eight values of tag 274 in TIFF 6.0 and Exif 2.32, by their number.
 *
 * @param value 1 as stored, 2 mirrored, 3 turned half, 4 flipped, 5 to 8 the same with the sides swapped
 */
record Orientation(int value) {
    static final Orientation AS_STORED = new Orientation(1);

    /** What no camera should write is taken as stored. */
    Orientation {
        if (value < 1 || value > 8) value = 1;
    }

    boolean swapsSides() {
        return value >= 5;
    }

    BufferedImage upright(BufferedImage stored) {
        if (value == 1) return stored;
        int width = swapsSides() ? stored.getHeight() : stored.getWidth();
        int height = swapsSides() ? stored.getWidth() : stored.getHeight();
        var upright = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var graphics = upright.createGraphics();
        graphics.drawImage(stored, turn(stored.getWidth(), stored.getHeight()), null);
        graphics.dispose();
        return upright;
    }

    /** Columns are what x and y of a stored pixel add to x and y of the upright one. */
    private AffineTransform turn(int w, int h) {
        return switch (value) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }
}
