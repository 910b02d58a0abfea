package drylap.pictures;

import drylap.kernel.Coded;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The kinds of picture that are kept, known by their first bytes and not by what the sender calls them. */
public enum MediaType implements Coded {
    JPEG("image/jpeg"),
    PNG("image/png"),
    WEBP("image/webp");

    private static final byte[] PNG_SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private final String code;

    MediaType(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }

    /** Signatures: ISO 10918-1 (SOI and the next marker), PNG specification 5.2, RFC 9649 (RIFF container). */
    public static Optional<MediaType> of(byte[] content) {
        if (begins(content, 0, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF})) return Optional.of(JPEG);
        if (begins(content, 0, PNG_SIGNATURE)) return Optional.of(PNG);
        if (begins(content, 0, ascii("RIFF")) && begins(content, 8, ascii("WEBP"))) return Optional.of(WEBP);
        return Optional.empty();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static boolean begins(byte[] content, int at, byte[] signature) {
        return content.length >= at + signature.length
                && Arrays.equals(content, at, at + signature.length, signature, 0, signature.length);
    }
}
