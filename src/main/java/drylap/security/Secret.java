package drylap.security;

import drylap.kernel.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * What opens a door without a person signing in. It has 256 random bits, so that a fast hash keeps it safe: there is nothing to guess
 * from, unlike with a password.
 */
public final class Secret {
    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** Letters, digits, minus and underscore: it stands in an address as it is. */
    public static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** The only form in which a secret is kept. */
    public static byte[] hash(String secret) {
        return sha256(secret);
    }

    public static byte[] sha256(String text) {
        return Sha256.of(text.getBytes(StandardCharsets.UTF_8));
    }
}
