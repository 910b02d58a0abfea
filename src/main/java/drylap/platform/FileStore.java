package drylap.platform;

import static drylap.persistence.jooq.Tables.STORED_FILE;

import drylap.kernel.Sha256;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/** Keeps bytes under the SHA-256 of what they hold, in a folder or in their rows: the same bytes are kept once. */
@Service
public final class FileStore {
    private static final Logger LOG = LoggerFactory.getLogger(FileStore.class);

    private final DSLContext db;
    private final Clock clock;
    private final FileShelf shelf;

    FileStore(DSLContext db, Clock clock, FileShelf shelf) {
        this.db = db;
        this.clock = clock;
        this.shelf = shelf;
    }

    /**
     * Joins the caller's transaction, which must also write the row that refers to the file: its lock keeps whoever throws
     * away unused files from this one until then. Answers the digest under which the bytes are found again.
     */
    public String put(byte[] content) {
        String digest = digest(content);
        db.insertInto(STORED_FILE)
                .set(STORED_FILE.SHA256, digest)
                .set(STORED_FILE.CONTENT, shelf.folder().isPresent() ? null : content)
                .set(STORED_FILE.SIZE_BYTES, content.length)
                .set(STORED_FILE.STORED_AT, clock.instant())
                .onConflict(STORED_FILE.SHA256)
                .doUpdate()
                .set(STORED_FILE.STORED_AT, clock.instant())
                .execute();
        shelf.folder().ifPresent(folder -> folder.write(digest, content));
        return digest;
    }

    /** Empty where there is none, or where what is there is not what was stored. */
    public Optional<byte[]> get(String digest) {
        return db.selectFrom(STORED_FILE)
                .where(STORED_FILE.SHA256.eq(digest))
                .fetchOptional()
                .flatMap(row -> row.getContent() != null
                        ? Optional.of(row.getContent())
                        : shelf.folder().flatMap(folder -> folder.read(digest)).filter(bytes -> whole(digest, bytes)));
    }

    private static boolean whole(String digest, byte[] content) {
        if (digest(content).equals(digest)) return true;
        LOG.error("The file {} is damaged: what is in it is not what was stored; restore it from a backup", digest);
        return false;
    }

    public static String digest(byte[] content) {
        return HexFormat.of().formatHex(Sha256.of(content));
    }
}
