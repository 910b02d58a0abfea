package drylap.pictures;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.image.BufferedImage;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;

/**
 * A picture once decoded, made smaller on the way, so that a large one takes little memory.
 *
 * @param width of the whole, in pixels as stored
 */
record Decoded(int width, int height, BufferedImage small) {
    /** Its size is read from its head and judged before anything is unpacked. */
    static Decoded of(MediaType type, byte[] kept) throws IOException, BadPicture {
        ImageReader reader = reader(type);
        try (var in = new EndingInput(kept)) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > Pictures.MOST_PIXELS || Math.max(width, height) > Pictures.LONGEST_SIDE_PX)
                throw BadPicture.tooLarge(width, height);
            var param = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(width, height) / (2 * Pictures.THUMBNAIL_PX));
            param.setSourceSubsampling(step, step, 0, 0);
            return new Decoded(width, height, reader.read(0, param));
        } finally {
            reader.dispose();
        }
    }

    private static ImageReader reader(MediaType type) throws IOException {
        return switch (type) {
            case JPEG -> ImageIO.getImageReadersByFormatName("jpeg").next();
            case PNG -> ImageIO.getImageReadersByFormatName("png").next();
            case WEBP -> new WebPImageReaderSpi().createReaderInstance(null);
        };
    }
}
