package drylap.tables;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.dhatim.fastexcel.Worksheet;

/** A table as a workbook with one sheet. */
public final class Workbook {
    public static final String MEDIA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /** Most characters that a cell takes, by Microsoft's specification of Excel's limits. */
    static final int LONGEST_TEXT = 32_767;

    private static final int LONGEST_SHEET_NAME = 31;
    private static final int WIDEST = 60;
    private static final String AS_TEXT = "@";

    private Workbook() {}

    public static byte[] xlsx(Table table) {
        var out = new ByteArrayOutputStream();
        try (var book = new org.dhatim.fastexcel.Workbook(out, "Drylap", "1.0")) {
            var sheet = book.newWorksheet(sheetName(table.title()));
            for (int column = 0; column < table.heads().size(); column++) column(sheet, table, column);
            sheet.freezePane(0, 1);
            book.finish();
        } catch (IOException never) {
            throw new UncheckedIOException("a workbook could not be written to memory", never);
        }
        return out.toByteArray();
    }

    /** Says where, what and when; letters of any script and digits, since every system takes those. */
    public static String fileName(String where, String what, LocalDate date) {
        return "%s_%s_%s.xlsx".formatted(plain(where), plain(what), date);
    }

    private static String plain(String words) {
        String plain = Normalizer.normalize(words, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "drylap" : plain.substring(0, Math.min(60, plain.length()));
    }

    private static void column(Worksheet sheet, Table table, int column) {
        text(sheet, 0, column, table.head(column));
        sheet.style(0, column).bold().set();
        int widest = table.head(column).length();
        for (int row = 0; row < table.rows().size(); row++) {
            List<Cell> cells = table.rows().get(row);
            if (column < cells.size()) widest = Math.max(widest, write(sheet, row + 1, column, cells.get(column)));
        }
        sheet.width(column, Math.min(WIDEST, widest + 2));
    }

    /** Answers how many characters are seen. */
    private static int write(Worksheet sheet, int row, int column, Cell cell) {
        return switch (cell) {
            case Cell.Text text -> text(sheet, row, column, text.words());
            case Cell.Number number -> number(sheet, row, column, number.value());
            case Cell.Day day -> {
                sheet.value(row, column, day.date());
                sheet.style(row, column).format("yyyy-mm-dd").set();
                yield 10;
            }
            case Cell.Time time -> {
                sheet.value(row, column, time.at());
                sheet.style(row, column).format("yyyy-mm-dd hh:mm").set();
                yield 16;
            }
        };
    }

    private static int number(Worksheet sheet, int row, int column, double value) {
        if (!Double.isFinite(value)) return text(sheet, row, column, "not known");
        if (value == Math.rint(value) && Math.abs(value) < 1e15) sheet.value(row, column, (long) value);
        else sheet.value(row, column, value);
        return 10;
    }

    /**
     * A string is never a formula in a workbook; one that a program would take for a formula when it is typed anew, or read from a
     * file without types, is marked as text as well (OWASP, CSV injection: = + - @, tab, carriage return).
     */
    private static int text(Worksheet sheet, int row, int column, String words) {
        String clean = printable(words);
        if (clean.isEmpty()) return 0;
        sheet.value(row, column, clean);
        if ("=+-@\t\r\n".indexOf(clean.charAt(0)) >= 0)
            sheet.style(row, column).format(AS_TEXT).set();
        return clean.lines().mapToInt(String::length).max().orElse(0);
    }

    /** Without what XML 1.0 has no letter for. */
    private static String printable(String words) {
        String clean = words.codePoints()
                .filter(point -> point >= 0x20
                                && point != 0xFFFE
                                && point != 0xFFFF
                                && (point < Character.MIN_SURROGATE || point > Character.MAX_SURROGATE)
                        || point == '\t'
                        || point == '\n'
                        || point == '\r')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return clean.substring(0, Math.min(LONGEST_TEXT, clean.length()));
    }

    private static String sheetName(String title) {
        String name = title.replaceAll("[\\[\\]:*?/\\\\']", " ").strip();
        return name.isEmpty() ? "Table" : name.substring(0, Math.min(LONGEST_SHEET_NAME, name.length()));
    }
}
