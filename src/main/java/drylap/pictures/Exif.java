package drylap.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The TIFF block that Exif puts into pictures (Exif 2.32, 4.5), as far as which side is up goes. */
final class Exif {
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY = 12;

    private Exif() {}

    /** As stored where the block does not say, or is broken: what a camera wrote there is no reason to refuse a photo. */
    static Orientation orientation(byte[] tiff) {
        try {
            return read(ByteBuffer.wrap(tiff));
        } catch (IndexOutOfBoundsException cutOff) {
            return Orientation.AS_STORED;
        }
    }

    private static Orientation read(ByteBuffer tiff) {
        int order = tiff.getShort(0);
        if (order != 0x4949 && order != 0x4D4D) return Orientation.AS_STORED;
        tiff.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = Short.toUnsignedInt(tiff.getShort(directory));
        for (int at = directory + 2; at < directory + 2 + entries * ENTRY; at += ENTRY)
            if (Short.toUnsignedInt(tiff.getShort(at)) == ORIENTATION && tiff.getShort(at + 2) == SHORT)
                return new Orientation(tiff.getShort(at + 8));
        return Orientation.AS_STORED;
    }

    /** A block that says nothing else. */
    static byte[] only(Orientation orientation) {
        return ByteBuffer.allocate(26)
                .putShort((short) 0x4D4D)
                .putShort((short) 42)
                .putInt(8)
                .putShort((short) 1)
                .putShort((short) ORIENTATION)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) orientation.value())
                .putShort((short) 0)
                .putInt(0)
                .array();
    }

    /** What is written back: all but who took it, or which side is up; empty where that says nothing. */
    static byte[] kept(byte[] tiff, boolean all) {
        byte[] nameless = all ? ExifNames.blanked(tiff) : new byte[0];
        if (nameless.length > 0) return nameless;
        var orientation = orientation(tiff);
        return orientation.equals(Orientation.AS_STORED) ? new byte[0] : only(orientation);
    }
}
