package drylap.keeping;

import drylap.kernel.Sha256;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.postgresql.PGConnection;

/** A table's rows as text that says the same whatever the server's settings are. */
final class TableText {
    /** @param sha256 of the text */
    record Copied(long rows, String sha256) {}

    private final PGConnection connection;

    TableText(Connection connection) throws SQLException {
        this.connection = connection.unwrap(PGConnection.class);
        try (var statement = connection.createStatement()) {
            statement.execute("set local timezone to 'UTC'");
            statement.execute("set local datestyle to 'ISO, YMD'");
            statement.execute("set local intervalstyle to 'iso_8601'");
            statement.execute("set local bytea_output to 'hex'");
            statement.execute("set local extra_float_digits to 3");
        }
    }

    Copied copyOut(String table, List<String> columns, OutputStream to) throws SQLException, IOException {
        MessageDigest digest = Sha256.begun();
        // what is copied into stays open: it is one part of a larger file
        OutputStream open = new FilterOutputStream(to) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                out.write(bytes, from, length);
            }

            @Override
            public void close() {}
        };
        try (var text = new DigestOutputStream(open, digest)) {
            long rows = connection
                    .getCopyAPI()
                    .copyOut("copy %s to stdout with (encoding 'UTF8')".formatted(named(table, columns)), text);
            return new Copied(rows, Sha256.hex(digest));
        }
    }

    long copyIn(String table, List<String> columns, InputStream from) throws SQLException, IOException {
        return connection
                .getCopyAPI()
                .copyIn("copy %s from stdin with (encoding 'UTF8')".formatted(named(table, columns)), from);
    }

    String quoted(String name) throws SQLException {
        return connection.escapeIdentifier(name);
    }

    private String named(String table, List<String> columns) throws SQLException {
        StringBuilder text = new StringBuilder(quoted(table)).append(" (");
        for (int i = 0; i < columns.size(); i++) text.append(i == 0 ? "" : ", ").append(quoted(columns.get(i)));
        return text.append(')').toString();
    }
}
