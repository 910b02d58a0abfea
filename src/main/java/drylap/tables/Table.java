package drylap.tables;

import java.util.List;

/** A table to be taken along; a row may be shorter than the heads. */
public record Table(String title, List<String> heads, List<List<Cell>> rows) {
    public Table {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows)
            if (row.size() > heads.size())
                throw new IllegalArgumentException(
                        "%s: a row of %d cells under %d heads".formatted(title, row.size(), heads.size()));
    }

    /** With the unit, where all numbers below have the same. */
    String head(int column) {
        var units = rows.stream()
                .filter(row -> column < row.size() && row.get(column) instanceof Cell.Number)
                .map(row -> ((Cell.Number) row.get(column)).unit())
                .distinct()
                .toList();
        String head = heads.get(column);
        boolean one = units.size() == 1 && !units.getFirst().isEmpty();
        return one && !head.contains(units.getFirst()) ? "%s (%s)".formatted(head, units.getFirst()) : head;
    }
}
