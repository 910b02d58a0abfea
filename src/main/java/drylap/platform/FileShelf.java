package drylap.platform;

import java.util.Optional;

/**
 * Where the bytes of stored files lie.
 *
 * @param folder a folder; without one they lie in their rows
 */
record FileShelf(Optional<FileFolder> folder) {}
