package drylap.windowschedule.files;

/**
 * How much a window schedule may hold, so that a wrong or hostile file is refused before it fills the memory.
 *
 * @param bytes of the file
 * @param unpackedBytes of all that an XLSX holds
 * @param ratio of unpacked to packed bytes of one of its parts, asked beyond a mebibyte
 * @param parts of an XLSX
 */
record FileLimits(int bytes, long unpackedBytes, int ratio, int parts, int rows, int columns, int cellCharacters) {
    private static final int MEBIBYTE = 1 << 20;
    /** Where a ratio begins to say anything: a small part of blank rows packs well, too. */
    static final long RATIO_ASKED_FROM = MEBIBYTE;

    static final FileLimits STANDARD = new FileLimits(8 * MEBIBYTE, 64L * MEBIBYTE, 200, 500, 20_000, 200, 1_000);

    static String mebibytes(long bytes) {
        return bytes / MEBIBYTE + " MiB";
    }
}
