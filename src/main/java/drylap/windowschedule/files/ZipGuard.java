package drylap.windowschedule.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Unpacks a zip file once to nowhere, counting what really comes out: what it says of its sizes may be a lie. Only what passes is
 * given to a reader of workbooks.
 */
final class ZipGuard {
    private static final String ACCEPTED = "an XLSX workbook as an office program saves it";

    private final FileLimits limits;
    private final byte[] buffer = new byte[1 << 16];
    private long total;

    private ZipGuard(FileLimits limits) {
        this.limits = limits;
    }

    static void check(byte[] bytes, FileLimits limits) throws RefusedFile {
        new ZipGuard(limits).check(bytes);
    }

    private void check(byte[] bytes) throws RefusedFile {
        int parts = 0;
        var packed = new CountedBytes(bytes);
        try (var zip = new ZipInputStream(packed)) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                if (++parts > limits.parts())
                    throw new RefusedFile("", "holds too many parts", "at most %d parts".formatted(limits.parts()));
                unpack(part.getName(), zip, packed);
            }
        } catch (IOException | IllegalArgumentException broken) {
            throw new RefusedFile("", "is a broken or cut off zip file", ACCEPTED);
        }
        if (parts == 0) throw new RefusedFile("", "is a broken or cut off zip file", ACCEPTED);
    }

    private void unpack(String name, InputStream part, CountedBytes packed) throws IOException, RefusedFile {
        long packedBefore = packed.count;
        long size = 0;
        for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
            size += read;
            total += read;
            if (total > limits.unpackedBytes())
                throw new RefusedFile(
                        "part " + name,
                        "unpacks to too much",
                        "at most %s in all".formatted(FileLimits.mebibytes(limits.unpackedBytes())));
            long packedBytes = Math.max(1, packed.count - packedBefore);
            if (size > FileLimits.RATIO_ASKED_FROM && size / packedBytes > limits.ratio())
                throw new RefusedFile(
                        "part " + name,
                        "unpacks to more than %d times its size".formatted(limits.ratio()),
                        "a workbook that was packed as usual");
        }
    }

    /** How much of the packed bytes was asked for; a buffer ahead at most. */
    private static final class CountedBytes extends ByteArrayInputStream {
        long count;

        CountedBytes(byte[] bytes) {
            super(bytes);
        }

        @Override
        public synchronized int read(byte[] into, int from, int length) {
            int read = super.read(into, from, length);
            count += Math.max(0, read);
            return read;
        }
    }
}
