package drylap.keeping;

import java.time.Instant;
import java.util.List;

/**
 * What a backup says that it holds.
 *
 * @param format of the file, from 1
 * @param schema the last migration of the database that was backed up, as "0034"
 * @param tables in an order in which they can be filled: what is referred to comes first
 */
record Manifest(
        int format,
        Instant madeAt,
        String schema,
        List<TablePart> tables,
        List<SequencePart> sequences,
        List<FilePart> files) {
    static final int FORMAT = 1;

    /** @param sha256 of the rows as PostgreSQL copies them out as text */
    record TablePart(String name, List<String> columns, long rows, String sha256) {}

    /** @param called whether the value was given away already */
    record SequencePart(String name, long value, boolean called) {}

    /** @param path below the folder of stored files, with slashes */
    record FilePart(String path, long bytes, String sha256) {}

    long rows() {
        return tables.stream().mapToLong(TablePart::rows).sum();
    }
}
