package drylap.windowschedule.files;

import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.jspecify.annotations.Nullable;

/** The visible sheets of an XLSX workbook, row by row. Formulas are not worked out: what was last worked out is stored with them. */
final class XlsxSheets {
    /** Spreadsheets keep 15 digits of a number; what binary fractions add beyond is noise. */
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private final FileLimits limits;

    private XlsxSheets(FileLimits limits) {
        this.limits = limits;
    }

    static List<Sheet> read(byte[] bytes, FileLimits limits) throws RefusedFile {
        ZipGuard.check(bytes, limits);
        SheetGuard.check(bytes, limits);
        try (var workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
            return new XlsxSheets(limits).sheets(workbook);
        } catch (IOException | RuntimeException unreadable) {
            throw new RefusedFile("", ScheduleSaid.NO_WORKBOOK.with(), ScheduleSaid.WORKBOOK.with());
        }
    }

    private List<Sheet> sheets(ReadableWorkbook workbook) throws IOException, RefusedFile {
        List<Sheet> sheets = new ArrayList<>();
        for (var sheet : workbook.getSheets().toList()) {
            if (sheet.getVisibility() != SheetVisibility.VISIBLE) continue;
            List<Sheet.Row> rows = rows(sheet);
            if (!rows.isEmpty()) sheets.add(new Sheet(sheet.getName(), rows));
        }
        return sheets;
    }

    private List<Sheet.Row> rows(org.dhatim.fastexcel.reader.Sheet sheet) throws IOException, RefusedFile {
        List<Sheet.Row> rows = new ArrayList<>();
        var guard = new RowGuard(sheet.getName(), limits);
        try (Stream<Row> stream = sheet.openStream()) {
            for (Iterator<Row> each = stream.iterator(); each.hasNext(); ) {
                Row row = each.next();
                List<String> cells = cells(row);
                guard.check(row.getRowNum(), cells);
                if (!cells.isEmpty()) rows.add(new Sheet.Row(row.getRowNum(), cells));
            }
        }
        return rows;
    }

    /** Up to the last cell with text; none where the row has no text. */
    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.getCellCount(); column++) cells.add(text(row.getCell(column)));
        while (!cells.isEmpty() && cells.getLast().isBlank()) cells.removeLast();
        return cells;
    }

    private static String text(@Nullable Cell cell) {
        if (cell == null || cell.getValue() == null) return "";
        if (cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA) return number(cell);
        return cell.getText();
    }

    /** A day in a cell was mostly typed as a fraction or a mark, such as 3/4 or 1-2: it is shown as a day, which is no length. */
    private static String number(Cell cell) {
        if (!(cell.getValue() instanceof BigDecimal number)) return String.valueOf(cell.getValue());
        if (isDay(cell.getDataFormatString()))
            return ScheduleSaid.A_DATE.with(cell.asDate().toLocalDate());
        BigDecimal shown = number.round(DIGITS).stripTrailingZeros();
        return shown.precision() - shown.scale() > 15 ? shown.toString() : shown.toPlainString();
    }

    private static boolean isDay(@Nullable String format) {
        if (format == null) return false;
        String plain = format.replaceAll("\"[^\"]*\"|\\[[^]]*]|\\\\.", "").toLowerCase(java.util.Locale.ROOT);
        return (plain.contains("d") && plain.contains("m")) || plain.contains("yy");
    }
}
