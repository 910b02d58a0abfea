package drylap.pictures;

import drylap.speech.Saying;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/** A WebP by its chunks (RFC 9649, 2.3 to 2.7). Kept are those that make a still picture. */
final class WebpParts implements PictureParts {
    private static final int HEAD = 12;
    private static final int HAS_EXIF = 0x08;
    private static final int HAS_XMP = 0x04;
    private static final int MOVES = 0x02;
    private static final Set<String> KEPT = Set.of("VP8 ", "VP8L", "ALPH", "ICCP");

    private final ByteBuffer sent;
    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();
    private byte[] extended = {};
    private byte[] exif = {};

    private WebpParts(byte[] sent) throws IOException {
        this.sent = ByteBuffer.wrap(sent).order(ByteOrder.LITTLE_ENDIAN);
        int end = this.sent.getInt(4) + 8;
        if (end < HEAD || end > sent.length) throw new Broken(Saying.of("it is cut off"));
        this.sent.limit(end).position(HEAD);
    }

    static WebpParts of(byte[] sent) throws IOException {
        var parts = new WebpParts(sent);
        while (parts.sent.remaining() >= 8) parts.chunk();
        if (parts.rest.size() == 0) throw new Broken(Saying.of("it has no picture in it"));
        return parts;
    }

    @Override
    public Orientation orientation() {
        return Exif.orientation(exif);
    }

    /** Only the extended form has room for Exif; in the simple form there was none. */
    @Override
    public byte[] written(boolean keepExif) {
        var out = new ByteArrayOutputStream();
        byte[] kept = Exif.kept(exif, keepExif);
        if (extended.length > 0) {
            byte[] flags = extended.clone();
            flags[0] = (byte) (flags[0] & ~(HAS_EXIF | HAS_XMP) | (kept.length > 0 ? HAS_EXIF : 0));
            out.writeBytes(chunk("VP8X", flags));
        }
        out.writeBytes(rest.toByteArray());
        if (extended.length > 0 && kept.length > 0) out.writeBytes(chunk("EXIF", kept));
        byte[] body = out.toByteArray();
        return ByteBuffer.allocate(HEAD + body.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(ascii("RIFF"))
                .putInt(4 + body.length)
                .put(ascii("WEBP"))
                .put(body)
                .array();
    }

    private void chunk() throws IOException {
        byte[] name = new byte[4];
        sent.get(name);
        int length = sent.getInt();
        if (length < 0 || length > sent.remaining()) throw new Broken(Saying.of("it is cut off"));
        byte[] data = new byte[length];
        sent.get(data);
        if (length % 2 == 1 && sent.hasRemaining()) sent.get();
        keep(new String(name, StandardCharsets.ISO_8859_1), data);
    }

    private void keep(String name, byte[] data) throws IOException {
        if (KEPT.contains(name)) rest.writeBytes(chunk(name, data));
        else if (name.equals("EXIF")) exif = withoutName(data);
        else if (name.equals("VP8X") && data.length >= 10) {
            if ((data[0] & MOVES) != 0) throw new Broken(Saying.of("it moves"));
            extended = data;
        }
    }

    /** Some cameras put JPEG's name of the block before it. */
    private static byte[] withoutName(byte[] data) {
        boolean named = data.length > 6 && new String(data, 0, 6, StandardCharsets.ISO_8859_1).equals("Exif\0\0");
        return named ? java.util.Arrays.copyOfRange(data, 6, data.length) : data;
    }

    private static byte[] chunk(String name, byte[] data) {
        return ByteBuffer.allocate(8 + data.length + data.length % 2)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(ascii(name))
                .putInt(data.length)
                .put(data)
                .array();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
