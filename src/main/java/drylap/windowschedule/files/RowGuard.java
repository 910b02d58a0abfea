package drylap.windowschedule.files;

import drylap.windowschedule.ScheduleSaid;
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
                        where(ScheduleSaid.CELL.with(Sheet.letters(column) + row)),
                        ScheduleSaid.MUCH_TEXT.with(),
                        ScheduleSaid.MOST_IN_CELL.with(limits.cellCharacters()));
    }

    /** @param column from 0 */
    void checkPlace(int row, int column) throws RefusedFile {
        if (row > limits.rows())
            throw new RefusedFile(
                    where(ScheduleSaid.ROW.with(row)),
                    ScheduleSaid.MANY_ROWS.with(),
                    ScheduleSaid.MOST_ROWS.with(limits.rows()));
        if (column >= limits.columns())
            throw new RefusedFile(
                    where(ScheduleSaid.ROW.with(row)),
                    ScheduleSaid.MANY_COLUMNS.with(),
                    ScheduleSaid.MOST_COLUMNS.with(limits.columns()));
    }

    private String where(String place) {
        return sheet.isEmpty() ? place : ScheduleSaid.SHEET.with(sheet, place);
    }
}
