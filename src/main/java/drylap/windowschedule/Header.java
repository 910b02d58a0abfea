package drylap.windowschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The header of a sheet.
 *
 * @param first the place of its first row among the sheet's rows, from 0
 * @param depth over how many rows it goes
 * @param titles by column; blank where a column has none
 */
public record Header(int first, int depth, List<String> titles) {
    private static final int SEARCHED_ROWS = 60;
    private static final int DEEPEST = 3;

    public Header {
        titles = List.copyOf(titles);
    }

    /** The place of the first row below it. */
    public int below() {
        return first + depth;
    }

    /** The unit that the title of a column says. */
    public Optional<LengthUnit> unit(int column) {
        return column < titles.size() ? new Title(titles.get(column)).unit() : Optional.empty();
    }

    /**
     * The rows that name most columns, of which one must be the mark or a size; the fewest such rows, the first of equals. Above them may be
     * titles of the sheet. A title over several columns is read for each of them.
     */
    public static Optional<Header> find(Sheet sheet) {
        List<Header> found = new ArrayList<>();
        for (int first = 0; first < Math.min(SEARCHED_ROWS, sheet.rows().size()); first++)
            for (int depth = 1;
                    depth <= DEEPEST && first + depth <= sheet.rows().size();
                    depth++) if (couldBe(sheet, first, depth)) found.add(at(sheet, first, depth));
        return found.stream()
                .filter(header ->
                        header.columns().keySet().stream().anyMatch(field -> field == Field.MARK || field.size())
                                && header.columns().size() > 1)
                .max(Comparator.<Header>comparingInt(header -> header.columns().size())
                        .thenComparingInt(header -> -header.depth())
                        .thenComparingInt(header -> -header.first()));
    }

    /** The header that a person says: these rows, whatever they name. */
    public static Header at(Sheet sheet, int first, int depth) {
        List<String> titles = new ArrayList<>();
        List<Sheet.Row> rows = sheet.rows().subList(first, first + depth);
        for (int column = 0; column < sheet.columns(); column++) titles.add(title(rows, column));
        return new Header(first, depth, titles);
    }

    /** Rows with sizes or counts in them are no header. */
    private static boolean couldBe(Sheet sheet, int first, int depth) {
        return sheet.rows().subList(first, first + depth).stream()
                .flatMap(row -> row.cells().stream())
                .noneMatch(cell ->
                        !cell.isBlank() && Character.isDigit(cell.strip().charAt(0)));
    }

    /** A title above its left neighbour is this column's too, where it makes sense of what stands below it. */
    private static String title(List<Sheet.Row> rows, int column) {
        String alone = title(rows, column, false);
        String shared = title(rows, column, true);
        return named(shared) || !named(alone) ? shared : alone;
    }

    private static boolean named(String title) {
        return !new Title(title).ranks().isEmpty();
    }

    private static String title(List<Sheet.Row> rows, int column, boolean shared) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            String own = rows.get(i).cell(column).strip();
            boolean above = own.isEmpty() && shared && saysMoreBelow(rows, i, column);
            words.add(above ? leftOf(rows.get(i), column) : own);
        }
        words.removeIf(String::isEmpty);
        return String.join(" ", words);
    }

    private static boolean saysMoreBelow(List<Sheet.Row> rows, int above, int column) {
        return rows.subList(above + 1, rows.size()).stream()
                .anyMatch(row -> !row.cell(column).isBlank());
    }

    /** A title that is merged over several columns stands in the first of them. */
    private static String leftOf(Sheet.Row row, int column) {
        for (int left = column - 1; left >= 0; left--)
            if (!row.cell(left).isBlank()) return row.cell(left).strip();
        return "";
    }

    /** The column of each field that a title names; where several name it, the surest, and of those the first. */
    public Map<Field, Integer> columns() {
        Map<Field, Integer> columns = new EnumMap<>(Field.class);
        Map<Field, Integer> best = new EnumMap<>(Field.class);
        for (int at = 0; at < titles.size(); at++) {
            int column = at;
            new Title(titles.get(at)).ranks().forEach((field, rank) -> {
                if (rank >= best.getOrDefault(field, Integer.MAX_VALUE)) return;
                best.put(field, rank);
                columns.put(field, column);
            });
        }
        return columns;
    }
}
