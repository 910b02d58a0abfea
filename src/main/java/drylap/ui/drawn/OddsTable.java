package drylap.ui.drawn;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a chart shows, for reading and to be taken along: the page and the file hold the same cells.
 *
 * @param file its name as a file
 * @param heads with their units
 */
public record OddsTable(String file, String caption, List<String> heads, List<List<Cell>> rows) {
    public OddsTable {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows)
            if (row.size() != heads.size())
                throw new IllegalArgumentException(
                        "%s: a row of %d cells under %d heads".formatted(file, row.size(), heads.size()));
    }

    /**
     * @param shown on the page
     * @param written in the file, where dates and times are of ISO 8601
     */
    public record Cell(String shown, String written) {
        public static Cell of(String both) {
            return new Cell(both, both);
        }
    }

    /** By RFC 4180. */
    public String csv() {
        return Stream.concat(
                        Stream.of(heads),
                        rows.stream().map(row -> row.stream().map(Cell::written).toList()))
                .map(cells -> cells.stream().map(OddsTable::quoted).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
