package drylap.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Set;

/** What names somebody in the block that a camera writes (tags of TIFF 6.0 and of Exif 2.32, 4.6): put to zero where the place is kept. */
final class ExifNames {
    private static final int EXIF_DIRECTORY = 0x8769;
    /** Description, artist, host computer, copyright, maker's note, comment, the author's two, and the owner of the camera. */
    private static final Set<Integer> NAMING =
            Set.of(0x010E, 0x013B, 0x013C, 0x8298, 0x927C, 0x9286, 0x9C9C, 0x9C9D, 0xA430);

    /** Bytes of a value by its type, 1 to 12. */
    private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

    private static final int ENTRY = 12;
    private static final int INLINE = 4;

    private final ByteBuffer tiff;

    private ExifNames(ByteBuffer tiff) {
        this.tiff = tiff;
    }

    /** The same block without them; one that is broken, and so may hold them anywhere, is none at all. */
    static byte[] blanked(byte[] tiff) {
        try {
            var copy = ByteBuffer.wrap(tiff.clone());
            int order = copy.getShort(0);
            if (order != 0x4949 && order != 0x4D4D) return new byte[0];
            copy.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            new ExifNames(copy).directory(copy.getInt(4), true);
            return copy.array();
        } catch (IndexOutOfBoundsException | IllegalArgumentException cutOff) {
            return new byte[0];
        }
    }

    private void directory(int directory, boolean first) {
        int entries = Short.toUnsignedInt(tiff.getShort(directory));
        for (int at = directory + 2; at < directory + 2 + entries * ENTRY; at += ENTRY) {
            int tag = Short.toUnsignedInt(tiff.getShort(at));
            if (NAMING.contains(tag)) blank(at);
            else if (first && tag == EXIF_DIRECTORY) directory(tiff.getInt(at + 8), false);
        }
    }

    private void blank(int entry) {
        int type = Short.toUnsignedInt(tiff.getShort(entry + 2));
        long bytes = Integer.toUnsignedLong(tiff.getInt(entry + 4)) * (type < SIZES.length ? SIZES[type] : 1);
        long from = bytes <= INLINE ? entry + 8L : Integer.toUnsignedLong(tiff.getInt(entry + 8));
        if (from + bytes > tiff.capacity()) throw new IndexOutOfBoundsException("a value behind the end");
        Arrays.fill(tiff.array(), (int) from, (int) (from + bytes), (byte) 0);
    }
}
