package drylap.platform;

import static drylap.persistence.jooq.Tables.STORED_FILE;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Keeps bytes in the database under the SHA-256 of what they hold: the same bytes are kept once. */
@Service
public final class FileStore {
    private final DSLContext db;
    private final Clock clock;

    FileStore(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    /** Joins the caller's transaction; answers the digest under which the bytes are found again. */
    public String put(byte[] content) {
        String digest = digest(content);
        db.insertInto(STORED_FILE)
                .set(STORED_FILE.SHA256, digest)
                .set(STORED_FILE.CONTENT, content)
                .set(STORED_FILE.STORED_AT, clock.instant())
                .onConflictDoNothing()
                .execute();
        return digest;
    }

    /** Whoever asks knows that nothing refers to the bytes any more. */
    public void remove(String digest) {
        db.deleteFrom(STORED_FILE).where(STORED_FILE.SHA256.eq(digest)).execute();
    }

    public Optional<byte[]> get(String digest) {
        return db.select(STORED_FILE.CONTENT)
                .from(STORED_FILE)
                .where(STORED_FILE.SHA256.eq(digest))
                .fetchOptional(STORED_FILE.CONTENT);
    }

    public static String digest(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException(never);
        }
    }
}
