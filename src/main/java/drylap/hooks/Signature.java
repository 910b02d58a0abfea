package drylap.hooks;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** HMAC-SHA-256 (RFC 2104, FIPS 180-4) over the moment of sending and the body, so that neither can be put with another. */
final class Signature {
    private static final String ALGORITHM = "HmacSHA256";

    private Signature() {}

    /** @param sentAt as it stands in the header; signed with a full stop between it and the body */
    static String of(String secret, String sentAt, String body) {
        return hex(secret, "%s.%s".formatted(sentAt, body));
    }

    static String hex(String secret, String text) {
        try {
            var mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), ALGORITHM));
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException never) {
            throw new IllegalStateException("every Java platform has " + ALGORITHM, never);
        }
    }
}
