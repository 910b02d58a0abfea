package drylap.security;

import drylap.kernel.Sha256;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.temporal.ChronoField;
import org.jspecify.annotations.Nullable;

/** How a seal is reckoned. Never changes: seals that are there could not be checked any more. */
final class SealChain {
    static final String START = "0".repeat(64);

    private static final long MICROS = 1_000_000;

    private SealChain() {}

    /**
     * What is sealed of one line.
     *
     * @param at to the microsecond, as it is stored
     */
    record Line(
            long id,
            Instant at,
            @Nullable Long personId,
            String person,
            @Nullable String site,
            String what) {}

    /** The words by themselves, with bytes drawn for them, so that a seal says nothing of words that are not there. */
    static String words(byte[] nonce, Line line) {
        MessageDigest digest = Sha256.begun();
        digest.update(nonce);
        add(digest, line.person());
        add(digest, line.what());
        return Sha256.hex(digest);
    }

    /** @param before the seal before, or {@link #START} */
    static String seal(String before, long seq, Line line, String wordsSha256) {
        MessageDigest digest = Sha256.begun();
        add(digest, before);
        add(digest, String.valueOf(seq));
        add(digest, String.valueOf(line.id()));
        add(digest, String.valueOf(micros(line.at())));
        add(digest, line.personId() == null ? "" : line.personId().toString());
        add(digest, line.site() == null ? "" : line.site());
        add(digest, wordsSha256);
        return Sha256.hex(digest);
    }

    /** With its length before it, so that no two lists of parts read the same. */
    private static void add(MessageDigest digest, String part) {
        byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
        digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).flip());
        digest.update(bytes);
    }

    private static long micros(Instant at) {
        return at.getEpochSecond() * MICROS + at.get(ChronoField.MICRO_OF_SECOND);
    }
}
