package drylap.pictures;

import drylap.speech.Saying;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;

/**
 * A JPEG by its segments (ISO 10918-1, annex B). Kept are the tables, the scans, JFIF's density, colour profiles and Adobe's colour
 * transform; dropped are comments, every other application segment and whatever follows the end: second pictures, films, archives.
 */
final class JpegParts implements PictureParts {
    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int COMMENT = 0xFE;
    /** Progressive pictures have some ten; a file of thousands of tiny ones over many pixels takes minutes to decode. */
    private static final int MOST_SCANS = 100;

    private static final Set<String> KEPT_APPLICATIONS = Set.of("E0 JFIF\0", "E2 ICC_PROFILE\0", "EE Adobe");
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    private final byte[] sent;
    private final ByteArrayOutputStream density = new ByteArrayOutputStream();
    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();
    private byte[] exif = {};
    private int at = 2;
    private int scans;

    private JpegParts(byte[] sent) {
        this.sent = sent;
    }

    static JpegParts of(byte[] sent) throws IOException {
        var parts = new JpegParts(sent);
        while (parts.segment()) {}
        if (parts.scans == 0) throw new Broken(Saying.of("it has no picture in it"));
        return parts;
    }

    @Override
    public Orientation orientation() {
        return Exif.orientation(exif);
    }

    @Override
    public byte[] written(boolean keepExif) {
        var out = new ByteArrayOutputStream();
        out.write(0xFF);
        out.write(SOI);
        out.writeBytes(density.toByteArray());
        byte[] kept = Exif.kept(exif, keepExif);
        if (kept.length > 0) {
            int length = 2 + EXIF.length + kept.length;
            out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
            out.writeBytes(EXIF);
            out.writeBytes(kept);
        }
        out.writeBytes(rest.toByteArray());
        return out.toByteArray();
    }

    /** False at the end of the picture. */
    private boolean segment() throws IOException {
        int marker = marker();
        if (marker == EOI) {
            rest.write(0xFF);
            rest.write(EOI);
            return false;
        }
        int from = at;
        int end = from + length();
        if (marker == COMMENT) at = end;
        else if (marker >= 0xE0 && marker <= 0xEF) application(marker, from, end);
        else keep(rest, marker, from, end);
        if (marker == SOS) scan();
        return true;
    }

    private int marker() throws IOException {
        if (byteAt(at) != 0xFF) throw new Broken(Saying.of("there is no marker at byte {0}", at));
        while (byteAt(at) == 0xFF) at++;
        int marker = byteAt(at++);
        if (marker < 0xC0 || marker == SOI || marker >= 0xD0 && marker <= 0xD7)
            throw new Broken(Saying.of("marker {0} at byte {1} has no place there", "%02X".formatted(marker), at - 1));
        return marker;
    }

    private int length() throws IOException {
        int length = byteAt(at) << 8 | byteAt(at + 1);
        if (length < 2) throw new Broken(Saying.of("a segment at byte {0} has no length", at));
        byteAt(at + length - 1);
        return length;
    }

    private void application(int marker, int from, int end) {
        String name = new String(sent, from + 2, Math.min(14, end - from - 2), StandardCharsets.ISO_8859_1);
        String known = "%02X %s".formatted(marker, name);
        if (marker == 0xE1 && name.startsWith("Exif\0\0") && exif.length == 0)
            exif = Arrays.copyOfRange(sent, from + 2 + EXIF.length, end);
        if (KEPT_APPLICATIONS.stream().anyMatch(known::startsWith))
            keep(marker == 0xE0 ? density : rest, marker, from, end);
        at = end;
    }

    private void keep(ByteArrayOutputStream out, int marker, int from, int end) {
        out.write(0xFF);
        out.write(marker);
        out.write(sent, from, end - from);
        at = end;
    }

    /** Coded data up to the next marker; a zero behind FF makes it data, and restarts belong to it. */
    private void scan() throws IOException {
        if (++scans > MOST_SCANS) throw new Broken(Saying.of("it has more than {0} scans", MOST_SCANS));
        int from = at;
        while (true) {
            if (byteAt(at) != 0xFF) at++;
            else if (data(byteAt(at + 1))) at += 2;
            else break;
        }
        rest.write(sent, from, at - from);
    }

    private static boolean data(int behind) {
        return behind == 0 || behind >= 0xD0 && behind <= 0xD7;
    }

    private int byteAt(int index) throws IOException {
        if (index >= sent.length) throw new Broken(Saying.of("it is cut off"));
        return sent[index] & 0xFF;
    }
}
