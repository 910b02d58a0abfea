package drylap.windowschedule;

import java.util.List;

/** One sheet of a file, its cells as text. Rows without any text are left out; the others keep their numbers. */
public record Sheet(String name, List<Row> rows) {
    public Sheet {
        rows = List.copyOf(rows);
    }

    /** @param number as the file counts it, from 1 */
    public record Row(int number, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The text of a column, from 0; blank where the row ends before it. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /** How many columns the widest row has. */
    public int columns() {
        return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    }

    /** A column, from 0, as sheets name it: A to Z, AA and so on. */
    public static String letters(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
