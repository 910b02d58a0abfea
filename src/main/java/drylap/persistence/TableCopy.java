package drylap.persistence;

import java.io.StringReader;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.TableRecord;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.springframework.jdbc.support.SQLStateSQLExceptionTranslator;

/**
 * Adds many rows to a table through PostgreSQL's COPY, within the caller's transaction: a season has tens of thousands of
 * forecast hours, and COPY takes them several times as fast as batched inserts. Text, numbers, dates and times only.
 */
public final class TableCopy {
    private TableCopy() {}

    public static void add(DSLContext db, List<? extends TableRecord<?>> rows) {
        if (rows.isEmpty()) return;
        TableRecord<?> first = rows.getFirst();
        String columns = Arrays.stream(first.fields()).map(Field::getName).collect(Collectors.joining(", "));
        String statement = "copy %s (%s) from stdin".formatted(first.getTable().getName(), columns);
        String text = rows.stream().map(TableCopy::line).collect(Collectors.joining());
        try {
            db.connection(connection ->
                    connection.unwrap(PGConnection.class).getCopyAPI().copyIn(statement, new StringReader(text)));
        } catch (DataAccessException failure) {
            throw translated(failure, statement);
        }
    }

    /** jOOQ has its own statements translated to Spring's exceptions; this one is ours, and refuses in the same words. */
    private static RuntimeException translated(DataAccessException failure, String statement) {
        SQLException cause = failure.getCause(SQLException.class);
        RuntimeException known =
                cause == null ? null : new SQLStateSQLExceptionTranslator().translate("copy", statement, cause);
        return known == null ? failure : known;
    }

    private static String line(TableRecord<?> row) {
        return Arrays.stream(row.intoArray()).map(TableCopy::value).collect(Collectors.joining("\t", "", "\n"));
    }

    /** PostgreSQL's own way to write an array. */
    private static String array(String[] values) {
        return Arrays.stream(values)
                .map(value -> "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"")
                .collect(Collectors.joining(",", "{", "}"));
    }

    /** COPY's text format: backslash, tab and line ends are escaped, and a bare \N is null. */
    private static String value(@Nullable Object value) {
        if (value == null) return "\\N";
        String text = value instanceof String[] codes ? array(codes) : value.toString();
        return text.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }
}
