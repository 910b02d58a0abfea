package drylap.pictures;

import drylap.speech.Saying;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A PNG by its chunks (W3C PNG, third edition, 5.3). Kept are those that make the picture; texts, times, profiles that have to be
 * unpacked, films and whatever follows the end are dropped.
 */
final class PngParts implements PictureParts {
    private static final int SIGNATURE = 8;
    private static final int AROUND = 12;
    private static final Set<String> KEPT =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "sBIT", "pHYs");

    private final ByteBuffer sent;
    private final ByteArrayOutputStream before = new ByteArrayOutputStream();
    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();
    private byte[] exif = {};

    private PngParts(byte[] sent) {
        this.sent = ByteBuffer.wrap(sent);
        before.write(sent, 0, SIGNATURE);
        this.sent.position(SIGNATURE);
    }

    static PngParts of(byte[] sent) throws IOException {
        var parts = new PngParts(sent);
        while (parts.chunk()) {}
        return parts;
    }

    @Override
    public Orientation orientation() {
        return Exif.orientation(exif);
    }

    @Override
    public byte[] written(boolean keepExif) {
        var out = new ByteArrayOutputStream();
        out.writeBytes(before.toByteArray());
        byte[] kept = Exif.kept(exif, keepExif);
        if (kept.length > 0) out.writeBytes(chunk("eXIf", kept));
        out.writeBytes(rest.toByteArray());
        return out.toByteArray();
    }

    /** False at the end of the picture. */
    private boolean chunk() throws IOException {
        if (sent.remaining() < AROUND) throw new Broken(Saying.of("it is cut off"));
        int from = sent.position();
        int length = sent.getInt();
        if (length < 0 || length > sent.remaining() - 8)
            throw new Broken(Saying.of("the chunk at byte {0} is cut off", from));
        byte[] nameAndData = new byte[4 + length];
        sent.get(nameAndData);
        if (sent.getInt() != crc(nameAndData))
            throw new Broken(Saying.of("the chunk at byte {0} is not what its checksum says", from));
        String name = new String(nameAndData, 0, 4, StandardCharsets.ISO_8859_1);
        if (KEPT.contains(name)) (name.equals("IHDR") ? before : rest).write(sent.array(), from, AROUND + length);
        if (name.equals("eXIf")) exif = Arrays.copyOfRange(nameAndData, 4, nameAndData.length);
        return !name.equals("IEND");
    }

    private static byte[] chunk(String name, byte[] data) {
        byte[] nameAndData = ByteBuffer.allocate(4 + data.length)
                .put(name.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        return ByteBuffer.allocate(AROUND + data.length)
                .putInt(data.length)
                .put(nameAndData)
                .putInt(crc(nameAndData))
                .array();
    }

    private static int crc(byte[] nameAndData) {
        var crc = new CRC32();
        crc.update(nameAndData);
        return (int) crc.getValue();
    }
}
