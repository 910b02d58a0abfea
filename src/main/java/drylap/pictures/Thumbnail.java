package drylap.pictures;

import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A small copy as JPEG; what was transparent is white. */
final class Thumbnail {
    private static final float QUALITY = 0.85f;

    private Thumbnail() {}

    /** A picture that is small enough keeps its size. */
    static byte[] of(BufferedImage upright, int longestPx) throws IOException {
        double scale = Math.min(1, (double) longestPx / Math.max(upright.getWidth(), upright.getHeight()));
        int width = Math.max(1, (int) Math.round(upright.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(upright.getHeight() * scale));
        var small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(upright, 0, 0, width, height, Color.WHITE, null);
        graphics.dispose();
        return jpeg(small);
    }

    private static byte[] jpeg(BufferedImage small) throws IOException {
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var out = new ByteArrayOutputStream();
        try (var stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            var param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(small, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
