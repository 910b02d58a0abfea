package drylap.intake;

/**
 * How much a folder may hold, so that a wrong or hostile file is refused before it fills the memory.
 *
 * @param fileBytes of one file, unpacked
 * @param folderBytes of all files of a zip file, unpacked
 * @param files in a zip file
 */
record Limits(long fileBytes, long folderBytes, int files) {
    private static final long MEBIBYTE = 1 << 20;
    static final Limits STANDARD = new Limits(64 * MEBIBYTE, 256 * MEBIBYTE, 1000);

    String fileText() {
        return FolderWords.FILE_OF.with(size(fileBytes));
    }

    static String size(long bytes) {
        return bytes >= MEBIBYTE && bytes % MEBIBYTE == 0 ? bytes / MEBIBYTE + " MiB" : bytes + " bytes";
    }
}
