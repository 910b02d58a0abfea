package drylap.windowschedule.files;

import drylap.windowschedule.Sheet;
import java.util.List;

/** Refuses a sheet that is larger than a window schedule can be. */
final class RowGuard {
    private final String sheet;
    private final FileLimits limits;

    RowGuard(String sheet, FileLimits limits) {
        this.sheet = sheet;
        this.limits = limits;
    }

    void check(int row, List<String> cells) throws RefusedFile {
        checkPlace(row, cells.size() - 1);
        for (int column = 0; column < cells.size(); column++)
            if (cells.get(column).length() > limits.cellCharacters())
                throw new RefusedFile(
                        where("cell %s%d".formatted(Sheet.letters(column), row)),
                        "holds too much text",
                        "at most %d characters in a cell".formatted(limits.cellCharacters()));
    }

    /** @param column from 0 */
    void checkPlace(int row, int column) throws RefusedFile {
        if (row > limits.rows())
            throw new RefusedFile(
                    where("row " + row), "is one row too many", "at most %d rows".formatted(limits.rows()));
        if (column >= limits.columns())
            throw new RefusedFile(
                    where("row " + row), "has too many columns", "at most %d columns".formatted(limits.columns()));
    }

    private String where(String place) {
        return sheet.isEmpty() ? place : "sheet %s, %s".formatted(sheet, place);
    }
}
