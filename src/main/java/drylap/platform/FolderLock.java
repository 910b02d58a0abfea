package drylap.platform;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** One application per database folder. The system drops the lock when its process dies, however it dies. */
final class FolderLock implements AutoCloseable {
    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    static FolderLock on(Path folder) throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve("drylap.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (tryLock(channel) != null) return new FolderLock(channel);
        channel.close();
        throw new DatabaseTrouble(
                "Another running application uses the database folder " + folder,
                "Stop that application first, or give this one a folder of its own, with DRYLAP_DATA.");
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException sameProcess) {
            return null;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
