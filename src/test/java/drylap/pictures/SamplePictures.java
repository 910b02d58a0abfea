package drylap.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Objects;
import javax.imageio.ImageIO;

/**
 * Pictures that others made: upright, all of them are 64 x 32 pixels, red and green over blue and white. The pixels are ImageMagick's and
 * cwebp's; orientation, place, serial number, XMP, IPTC and comments were written in by ExifTool.
 */
public final class SamplePictures {
    private SamplePictures() {}

    /** Of {@code orientation-1.jpg} to {@code orientation-8.jpg}, {@code place.png}, {@code place.webp}, {@code plain.webp}. */
    public static byte[] named(String name) {
        try (var in = SamplePictures.class.getResourceAsStream("/pictures/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** Written by the JDK's own encoders. */
    public static byte[] drawn(String format, int width, int height) {
        try {
            var out = new ByteArrayOutputStream();
            ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
            return out.toByteArray();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
