package drylap.buildingmodel.step;

/**
 * How much a file may hold, so that a wrong or hostile one is refused before it fills the memory.
 *
 * @param bytes of the file
 * @param entities of the data section, wanted or not
 * @param depth of lists within lists
 * @param characters of one text, number or word
 * @param values of one wanted entity, all its lists together
 * @param kept entities that are wanted
 */
public record StepLimits(long bytes, int entities, int depth, int characters, int values, int kept) {
    private static final long MEBIBYTE = 1 << 20;

    public static final StepLimits STANDARD = new StepLimits(64 * MEBIBYTE, 3_000_000, 32, 20_000, 200_000, 400_000);

    public static String mebibytes(long bytes) {
        return bytes / MEBIBYTE + " MiB";
    }
}
