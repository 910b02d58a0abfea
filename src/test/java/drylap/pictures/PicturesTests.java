package drylap.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.iptc.IptcDirectory;
import com.drew.metadata.jpeg.JpegCommentDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is in a picture before and after is read by metadata-extractor, and its pixels by the JDK. */
class PicturesTests {
    private static final List<Class<? extends Directory>> TELLING =
            List.of(GpsDirectory.class, XmpDirectory.class, IptcDirectory.class, JpegCommentDirectory.class);

    private static Metadata metadata(byte[] picture) throws IOException, ImageProcessingException {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture));
    }

    private static List<String> telling(byte[] picture) throws Exception {
        var metadata = metadata(picture);
        return TELLING.stream()
                .filter(metadata::containsDirectoryOfType)
                .map(Class::getSimpleName)
                .toList();
    }

    private static int orientation(byte[] picture) throws Exception {
        var exif = metadata(picture).getFirstDirectoryOfType(ExifIFD0Directory.class);
        return exif == null ? 1 : exif.getInt(ExifIFD0Directory.TAG_ORIENTATION);
    }

    private static String colour(BufferedImage picture, int x, int y) {
        var colour = new Color(picture.getRGB(x, y));
        return "%s%s%s"
                .formatted(
                        colour.getRed() > 128 ? "R" : "",
                        colour.getGreen() > 128 ? "G" : "",
                        colour.getBlue() > 128 ? "B" : "");
    }

    private static String corners(byte[] thumbnail) throws IOException {
        var seen = ImageIO.read(new ByteArrayInputStream(thumbnail));
        int right = seen.getWidth() - 6;
        int bottom = seen.getHeight() - 6;
        return String.join(
                " ", colour(seen, 5, 5), colour(seen, right, 5), colour(seen, 5, bottom), colour(seen, right, bottom));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void whichever_way_a_camera_was_held_the_small_copy_stands_upright(int orientation) throws Exception {
        var picture = Pictures.lookAt(SamplePictures.named("orientation-%d.jpg".formatted(orientation)), false);

        assertThat(List.of(picture.widthPx(), picture.heightPx())).containsExactly(64, 32);
        assertThat(corners(picture.thumbnail())).isEqualTo("R G B RGB");
        assertThat(orientation(picture.bytes())).isEqualTo(orientation);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orientation-6.jpg", "place.png", "place.webp"})
    void what_a_camera_wrote_is_gone_and_which_side_is_up_stays(String name) throws Exception {
        byte[] sent = SamplePictures.named(name);
        assertThat(telling(sent)).contains("GpsDirectory", "XmpDirectory");

        var kept = Pictures.lookAt(sent, false);

        assertThat(telling(kept.bytes())).isEmpty();
        assertThat(new String(kept.bytes(), StandardCharsets.ISO_8859_1))
                .doesNotContain("12345", "Maker", "Someone", "hello");
        assertThat(orientation(kept.bytes())).isEqualTo(6);
        assertThat(corners(kept.thumbnail())).isEqualTo("R G B RGB");
    }

    @ParameterizedTest
    @ValueSource(strings = {"orientation-6.jpg", "place.png", "place.webp"})
    void a_place_that_is_wanted_stays_and_nothing_else_does(String name) throws Exception {
        byte[] sent = SamplePictures.named(name);

        byte[] kept = Pictures.lookAt(sent, true).bytes();

        assertThat(telling(kept)).containsExactly("GpsDirectory");
        assertThat(metadata(kept).getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation())
                .isEqualTo(metadata(sent)
                        .getFirstDirectoryOfType(GpsDirectory.class)
                        .getGeoLocation());
    }

    @Test
    void the_picture_itself_is_not_coded_anew() throws Exception {
        byte[] sent = SamplePictures.named("orientation-3.jpg");
        byte[] kept = Pictures.lookAt(sent, false).bytes();

        var before = ImageIO.read(new ByteArrayInputStream(sent));
        var after = ImageIO.read(new ByteArrayInputStream(kept));
        assertThat(after.getRGB(0, 0, 64, 32, null, 0, 64)).isEqualTo(before.getRGB(0, 0, 64, 32, null, 0, 64));
        assertThat(Pictures.lookAt(kept, false).bytes()).isEqualTo(kept);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orientation-1.jpg", "place.png", "place.webp", "plain.webp"})
    void what_hangs_behind_a_picture_is_cut_off(String name) throws Exception {
        byte[] sent = SamplePictures.named(name);
        byte[] page = "<html><script>alert(1)</script>PK".getBytes(StandardCharsets.US_ASCII);
        byte[] both = Arrays.copyOf(sent, sent.length + page.length);
        System.arraycopy(page, 0, both, sent.length, page.length);

        assertThat(Pictures.lookAt(both, false).bytes())
                .isEqualTo(Pictures.lookAt(sent, false).bytes());
    }

    /** Found by fuzzing: 65 bytes that kept a processor busy for more than 40 s. */
    @Test
    void a_few_bytes_that_claim_to_be_millions_of_pixels_are_refused() throws IOException {
        byte[] sent;
        try (var file = PicturesTests.class.getResourceAsStream("/fuzz/photo/cut-off-claims-millions.webp")) {
            sent = Objects.requireNonNull(file).readAllBytes();
        }

        assertThatExceptionOfType(BadPicture.class).isThrownBy(() -> Pictures.lookAt(sent, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orientation-1.jpg", "place.png", "place.webp", "plain.webp"})
    void a_picture_that_is_cut_off_anywhere_is_refused_and_never_fails_otherwise(String name) {
        byte[] whole = SamplePictures.named(name);
        for (int length = 0; length < whole.length - 2; length++) {
            byte[] part = Arrays.copyOf(whole, length);
            assertThatExceptionOfType(BadPicture.class)
                    .as("%d bytes of %s", length, name)
                    .isThrownBy(() -> Pictures.lookAt(part, false))
                    .withMessageContaining("accepted: JPEG, PNG, WebP");
        }
    }

    /** Cut off and damaged all over, and a PNG without its data. */
    @Test
    void where_a_picture_breaks_is_said_in_spanish_to_whoever_reads_it() throws Exception {
        var spanish = new Speech(Reading.USUAL.in(Language.SPANISH));
        Set<String> said = new TreeSet<>();
        for (byte[] bad : damaged())
            try {
                Pictures.lookAt(bad, false);
            } catch (BadPicture refused) {
                said.add(spanish.it(refused.saying()));
            }
        var words = new SpanishWords(HEX_PAIRS);
        assertThat(said).allSatisfy(one -> assertThat(words.strange(one)).isEmpty());
        for (String broken : List.of("está cortado", "suma de verificación", "decodificar", "marcador"))
            assertThat(said).anyMatch(one -> one.contains("se aceptan: JPEG, PNG, WebP") && one.contains(broken));
    }

    /** Markers of a JPEG are named by two digits of hexadecimal. */
    private static final List<String> HEX_PAIRS = "ABCDEF"
            .chars()
            .boxed()
            .flatMap(one -> "ABCDEF".chars().mapToObj(two -> "%c%c".formatted(one, two)))
            .toList();

    private static List<byte[]> damaged() {
        List<byte[]> all = new ArrayList<>();
        for (String name : List.of("orientation-1.jpg", "place.png", "place.webp")) {
            byte[] whole = SamplePictures.named(name);
            for (int at = 0; at < whole.length; at += 7) {
                all.add(Arrays.copyOf(whole, at));
                byte[] flipped = whole.clone();
                flipped[at] ^= (byte) 0xFF;
                all.add(flipped);
            }
        }
        byte[] png = SamplePictures.drawn("png", 16, 16);
        int data = indexOf(png, "IDAT") - 4;
        int end = indexOf(png, "IEND") - 4;
        byte[] without = Arrays.copyOf(png, data + png.length - end);
        System.arraycopy(png, end, without, data, png.length - end);
        all.add(without);
        return all;
    }

    private static int indexOf(byte[] png, String chunk) {
        return new String(png, StandardCharsets.ISO_8859_1).indexOf(chunk);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "<svg xmlns='http://www.w3.org/2000/svg'/>",
                "GIF89a......",
                "\u00ff\u00d8",
                "RIFF....WAVE",
                "%PDF-1.7",
                "\u00ff\u00d8\u00ff<html><script>alert(1)</script>",
                "RIFF\u0010\0\0\0WEBPVP8 "
            })
    void what_is_no_picture_is_refused(String content) {
        assertThatExceptionOfType(BadPicture.class)
                .isThrownBy(() -> Pictures.lookAt(content.getBytes(StandardCharsets.ISO_8859_1), false));
    }

    /** A head that says 60,000 x 60,000 in a file of a few hundred bytes; the length and place of the fields are PNG's and JPEG's. */
    @ParameterizedTest
    @CsvSource({"png,16", "jpg,0"})
    void a_few_bytes_that_would_unpack_to_billions_of_pixels_are_refused_by_their_head(String format, int at) {
        byte[] small = SamplePictures.drawn(format, 40, 30);
        byte[] bomb = format.equals("png") ? pngOf(small, at) : jpegOf(small);

        assertThatExceptionOfType(BadPicture.class)
                .isThrownBy(() -> Pictures.lookAt(bomb, false))
                .withMessageContaining("60000 x 60000 pixels")
                .matches(BadPicture::tooLarge);
    }

    private static byte[] pngOf(byte[] png, int at) {
        var buffer = java.nio.ByteBuffer.wrap(png).putInt(at, 60_000).putInt(at + 4, 60_000);
        var crc = new java.util.zip.CRC32();
        crc.update(png, 12, 17);
        return buffer.putInt(29, (int) crc.getValue()).array();
    }

    /** The size follows the marker of the frame, its length and its depth. */
    private static byte[] jpegOf(byte[] jpeg) {
        for (int i = 0; i < jpeg.length; i++)
            if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0)
                return java.nio.ByteBuffer.wrap(jpeg)
                        .putShort(i + 5, (short) 60_000)
                        .putShort(i + 7, (short) 60_000)
                        .array();
        throw new IllegalStateException("no frame");
    }

    @Test
    void a_scan_repeated_without_end_is_refused_before_it_is_decoded() {
        byte[] jpeg = SamplePictures.drawn("jpg", 16, 16);
        int scan = indexOf(jpeg, 0xDA);
        byte[] head = Arrays.copyOf(jpeg, scan);
        byte[] one = Arrays.copyOfRange(jpeg, scan, jpeg.length - 2);
        var out = new java.io.ByteArrayOutputStream();
        out.writeBytes(head);
        for (int i = 0; i < 101; i++) out.writeBytes(one);
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xD9});

        assertThatExceptionOfType(BadPicture.class)
                .isThrownBy(() -> Pictures.lookAt(out.toByteArray(), false))
                .withMessageContaining("more than 100 scans");
    }

    private static int indexOf(byte[] jpeg, int marker) {
        for (int i = 0; i + 1 < jpeg.length; i++)
            if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == marker) return i;
        throw new IllegalStateException("no such marker");
    }

    @Test
    void a_large_photo_gets_a_small_copy_and_a_small_one_keeps_its_size() throws Exception {
        var large = Pictures.lookAt(SamplePictures.drawn("jpg", 4000, 3000), false);
        var copy = ImageIO.read(new ByteArrayInputStream(large.thumbnail()));
        assertThat(List.of(copy.getWidth(), copy.getHeight())).containsExactly(Pictures.THUMBNAIL_PX, 600);

        var small = Pictures.lookAt(SamplePictures.drawn("png", 40, 30), false);
        assertThat(ImageIO.read(new ByteArrayInputStream(small.thumbnail())).getWidth())
                .isEqualTo(40);
    }
}
