package drylap.windowschedule.files;

import drylap.windowschedule.ScheduleSaid;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * Unpacks a zip file once to nowhere, counting what really comes out: what it says of its sizes may be a lie. Only what passes is
 * given to a reader of workbooks.
 */
final class ZipGuard {
    private static final String ACCEPTED = ScheduleSaid.WORKBOOK.with();

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
        try (ZipFile zip = opened(bytes)) {
            for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
                if (++parts > limits.parts())
                    throw new RefusedFile(
                            "", ScheduleSaid.MANY_PARTS.with(), ScheduleSaid.MOST_PARTS.with(limits.parts()));
                unpack(part, zip);
            }
        } catch (IOException | IllegalArgumentException broken) {
            throw new RefusedFile("", ScheduleSaid.BROKEN.with(), ACCEPTED);
        }
        if (parts == 0) throw new RefusedFile("", ScheduleSaid.BROKEN.with(), ACCEPTED);
    }

    /** By its list of contents, as the reader of workbooks opens it: what else may lie between the parts is read by neither. */
    static ZipFile opened(byte[] bytes) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .get();
    }

    private void unpack(ZipArchiveEntry part, ZipFile zip) throws IOException, RefusedFile {
        try (InputStream unpacked = zip.getInputStream(part)) {
            unpack(part.getName(), unpacked, Math.max(1, part.getCompressedSize()));
        }
    }

    private void unpack(String name, InputStream part, long packedBytes) throws IOException, RefusedFile {
        long size = 0;
        for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
            size += read;
            total += read;
            if (total > limits.unpackedBytes())
                throw new RefusedFile(
                        ScheduleSaid.PART.with(name),
                        ScheduleSaid.UNPACKS.with(),
                        ScheduleSaid.IN_ALL.with(FileLimits.mebibytes(limits.unpackedBytes())));
            if (size > FileLimits.RATIO_ASKED_FROM && size / packedBytes > limits.ratio())
                throw new RefusedFile(
                        ScheduleSaid.PART.with(name),
                        ScheduleSaid.UNPACKS_TIMES.with(limits.ratio()),
                        ScheduleSaid.AS_USUAL.with());
        }
    }
}
