package drylap.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * A folder of files, each named by the SHA-256 of what it holds. A file is there whole or not at all, whenever the power goes: it is
 * written beside, forced to disk, then moved to its name in one step.
 */
final class FileFolder {
    private final Path root;

    private FileFolder(Path root) {
        this.root = root;
    }

    /** @throws DatabaseTrouble where nothing can be written there */
    static FileFolder in(Path root) {
        var folder = new FileFolder(root.toAbsolutePath().normalize());
        try {
            Files.createDirectories(folder.half());
            Files.delete(Files.createTempFile(folder.half(), "probe", ""));
            return folder;
        } catch (IOException failure) {
            throw new DatabaseTrouble(
                    "The folder of photos %s cannot be written: %s".formatted(folder.root, failure.getMessage()),
                    "See that it can be written and has space; DRYLAP_FILES names another one.",
                    failure);
        }
    }

    Path root() {
        return root;
    }

    /** @throws UncheckedIOException where it could not be written; then nothing is there under the name */
    void write(String digest, byte[] content) {
        Path target = path(digest);
        try {
            if (Files.exists(target) && Files.size(target) == content.length) return;
            Path folder = Files.createDirectories(folder(digest));
            Path half = half().resolve(UUID.randomUUID().toString());
            forced(half, content);
            Files.move(half, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            force(folder);
        } catch (IOException failure) {
            throw new UncheckedIOException("a file could not be written to " + root, failure);
        }
    }

    private static void forced(Path file, byte[] content) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            for (var left = ByteBuffer.wrap(content); left.hasRemaining(); ) channel.write(left);
            channel.force(true);
        }
    }

    /** The name itself must survive too; where folders cannot be opened (Windows), the file system sees to it. */
    private static void force(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix"))
            try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
    }

    /** Empty where there is none. */
    Optional<byte[]> read(String digest) {
        try {
            return Optional.of(Files.readAllBytes(path(digest)));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        } catch (IOException failure) {
            throw new UncheckedIOException("a file could not be read from " + root, failure);
        }
    }

    void delete(String digest) {
        try {
            Files.deleteIfExists(path(digest));
        } catch (IOException failure) {
            throw new UncheckedIOException("a file could not be deleted from " + root, failure);
        }
    }

    /** What has lain here since before then. */
    List<String> olderThan(Instant then) {
        try (Stream<Path> files = Files.find(
                root,
                2,
                (path, about) -> about.isRegularFile()
                        && about.lastModifiedTime().toInstant().isBefore(then)
                        && path.getFileName().toString().matches("[0-9a-f]{64}"))) {
            return files.map(path -> path.getFileName().toString()).toList();
        } catch (IOException failure) {
            throw new UncheckedIOException("the folder of photos cannot be listed: " + root, failure);
        }
    }

    /** Clears away what was being written when a process died. */
    void sweep(Instant then) {
        try (Stream<Path> halves = Files.list(half())) {
            for (Path half : halves.toList())
                if (Files.getLastModifiedTime(half).toInstant().isBefore(then)) Files.deleteIfExists(half);
        } catch (IOException failure) {
            throw new UncheckedIOException("the folder of photos cannot be listed: " + root, failure);
        }
    }

    private Path half() {
        return root.resolve("half-written");
    }

    /** Some thousand files a folder, not a hundred thousand. */
    private Path folder(String digest) {
        return root.resolve(digest.substring(0, 2));
    }

    private Path path(String digest) {
        return folder(digest).resolve(digest);
    }
}
