package drylap.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java platform has. */
public final class Sha256 {
    private static final int AT_A_TIME = 1 << 16;

    private Sha256() {}

    /** A digest of nothing yet. */
    public static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java platform has SHA-256", never);
        }
    }

    public static byte[] of(byte[] content) {
        return begun().digest(content);
    }

    /** Reads to the end; closing is the caller's. */
    public static String hex(InputStream content) throws IOException {
        MessageDigest digest = begun();
        byte[] buffer = new byte[AT_A_TIME];
        for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) digest.update(buffer, 0, read);
        return hex(digest);
    }

    /** In 64 small letters and digits; the digest begins anew. */
    public static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
