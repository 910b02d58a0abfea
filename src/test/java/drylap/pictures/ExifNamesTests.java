package drylap.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tags and layout as TIFF 6.0 and Exif 2.32 have them, from memory. */
class ExifNamesTests {
    private static final String OWNER = "Zenobia Quillfeather\0";

    /** Which side is up and the artist in the first directory, the owner in the one of Exif, and a place that is told by a word. */
    private static byte[] tiff(ByteOrder order) {
        byte[] owner = OWNER.getBytes(StandardCharsets.US_ASCII);
        var tiff = ByteBuffer.allocate(200).order(order);
        tiff.putShort((short) (order == ByteOrder.BIG_ENDIAN ? 0x4D4D : 0x4949))
                .putShort((short) 42)
                .putInt(8);
        tiff.putShort((short) 3);
        entry(tiff, 0x0112, 3, 1, order == ByteOrder.BIG_ENDIAN ? 6 << 16 : 6);
        entry(tiff, 0x013B, 2, owner.length, 100);
        entry(tiff, 0x8769, 4, 1, 60);
        tiff.position(60).putShort((short) 2);
        entry(tiff, 0xA430, 2, owner.length, 130);
        entry(tiff, 0x9003, 2, 8, 160);
        tiff.put(100, owner).put(130, owner).put(160, "by noon\0".getBytes(StandardCharsets.US_ASCII));
        return tiff.array();
    }

    private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
        tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"BIG_ENDIAN", "LITTLE_ENDIAN"})
    void who_took_a_photo_is_gone_and_the_rest_stays(String order) {
        byte[] sent = tiff(order.equals("BIG_ENDIAN") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        assertThat(text(sent)).containsIgnoringCase("Quillfeather");

        byte[] kept = Exif.kept(sent, true);

        assertThat(text(kept)).doesNotContain("Quillfeather", "Zenobia").contains("by noon");
        assertThat(Exif.orientation(kept).value()).isEqualTo(6);
        assertThat(kept).hasSameSizeAs(sent);
    }

    @Test
    void a_block_that_is_cut_off_keeps_which_side_is_up_and_no_word() {
        byte[] sent = tiff(ByteOrder.BIG_ENDIAN);
        for (int length = 0; length < 151; length++)
            assertThat(text(Exif.kept(Arrays.copyOf(sent, length), true))).doesNotContain("Quill");
    }
}
