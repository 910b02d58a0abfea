package drylap.keeping;

import drylap.keeping.Manifest.SequencePart;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What tables there are, which columns of them are stored, and in which order they can be filled. */
final class Catalog {
    /** Says which migrations the database has had; a restored one has had its own. */
    static final String MIGRATIONS = "flyway_schema_history";

    private final Connection connection;

    Catalog(Connection connection) {
        this.connection = connection;
    }

    /** The last migration; empty for a database without a table. */
    String schema() throws SQLException {
        if (names("select table_name from information_schema.tables where table_schema = 'public' and table_name = '%s'"
                        .formatted(MIGRATIONS))
                .isEmpty()) return "";
        return names("select version from %s where success and version is not null order by installed_rank desc limit 1"
                        .formatted(MIGRATIONS))
                .getFirst();
    }

    boolean isEmpty() throws SQLException {
        return names("select table_name from information_schema.tables where table_schema = 'public'")
                .isEmpty();
    }

    /** Tables by name with their columns; what a table refers to comes before it. */
    Map<String, List<String>> tables() throws SQLException {
        Map<String, List<String>> columns = columns();
        Map<String, Set<String>> referred = references();
        Map<String, List<String>> ordered = new LinkedHashMap<>();
        while (ordered.size() < columns.size()) {
            List<String> next = columns.keySet().stream()
                    .filter(table -> !ordered.containsKey(table)
                            && ordered.keySet().containsAll(referred.getOrDefault(table, Set.of())))
                    .toList();
            if (next.isEmpty()) throw new IllegalStateException("tables refer to each other in a ring: " + referred);
            next.forEach(table -> ordered.put(table, columns.getOrDefault(table, List.of())));
        }
        return ordered;
    }

    private Map<String, List<String>> columns() throws SQLException {
        Map<String, List<String>> columns = new LinkedHashMap<>();
        try (var statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("""
                        select c.table_name, c.column_name
                        from information_schema.columns c
                        join information_schema.tables t using (table_schema, table_name)
                        where c.table_schema = 'public' and t.table_type = 'BASE TABLE' and c.is_generated = 'NEVER'
                        order by c.table_name, c.ordinal_position""")) {
            while (rows.next())
                if (!rows.getString(1).equals(MIGRATIONS))
                    columns.computeIfAbsent(rows.getString(1), _ -> new ArrayList<>())
                            .add(rows.getString(2));
        }
        return columns;
    }

    private Map<String, Set<String>> references() throws SQLException {
        Map<String, Set<String>> references = new LinkedHashMap<>();
        try (var statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("""
                        select c.conrelid::regclass::text, c.confrelid::regclass::text
                        from pg_constraint c
                        where c.contype = 'f' and c.connamespace = 'public'::regnamespace and c.conrelid <> c.confrelid""")) {
            while (rows.next())
                references
                        .computeIfAbsent(rows.getString(1), _ -> new LinkedHashSet<>())
                        .add(rows.getString(2));
        }
        return references;
    }

    List<SequencePart> sequences() throws SQLException {
        List<SequencePart> sequences = new ArrayList<>();
        for (String name : names(
                "select sequence_name from information_schema.sequences where sequence_schema = 'public' order by 1")) {
            try (var statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("select last_value, is_called from "
                            + connection
                                    .unwrap(org.postgresql.PGConnection.class)
                                    .escapeIdentifier(name))) {
                row.next();
                sequences.add(new SequencePart(name, row.getLong(1), row.getBoolean(2)));
            }
        }
        return sequences;
    }

    private List<String> names(String query) throws SQLException {
        List<String> names = new ArrayList<>();
        try (var statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) names.add(rows.getString(1));
        }
        return names;
    }
}
