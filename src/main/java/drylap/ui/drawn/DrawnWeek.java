package drylap.ui.drawn;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** A {@link Week} as pages fetch it: JSON in UTF-8, packed by gzip (RFC 1952). All pages that show the same week hold the same one. */
public final class DrawnWeek {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final byte[] packed;

    private DrawnWeek(byte[] packed) {
        this.packed = packed;
    }

    static DrawnWeek of(Week week) {
        var bytes = new ByteArrayOutputStream();
        try (var gzip = new GZIPOutputStream(bytes)) {
            JSON.writeValue(gzip, week);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new DrawnWeek(bytes.toByteArray());
    }

    /** In bytes. */
    public int packedLength() {
        return packed.length;
    }

    /** As it is kept. */
    public InputStream packed() {
        return new ByteArrayInputStream(packed);
    }

    /** For browsers that do not unpack. */
    public InputStream plain() throws IOException {
        return new GZIPInputStream(packed());
    }

    public String json() {
        try (var plain = plain()) {
            return new String(plain.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DrawnWeek one && Arrays.equals(packed, one.packed);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(packed);
    }
}
