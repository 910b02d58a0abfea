import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Makes the XLSX files of window schedules with LibreOffice Calc, so that what is read was written by an office program: the template of
 * the page, and the schedule of 600 rows of the tests. By hand, where they are to change: {@code java src/build/WindowScheduleFiles.java}
 * in the project's folder, with {@code soffice} on the path (Debian: libreoffice-calc).
 */
public final class WindowScheduleFiles {
    private static final String[] FRACTIONS = {"", " 1/2", " 1/4", " 3/8", "\u00bd", " 5/16", " 7/64", " 13/32"};
    private static final String[] WALLS = {"North", "East", "South", "West"};
    private static final String[] METHODS = {"A1", "B1", "Method A1", "b1"};
    private static final String[] MATERIALS = {"Vinyl", "Aluminium", "wood", "FIBERGLASS"};

    /** By row of the schedule, from 1: the column and what stands there instead. */
    private static final Map<Integer, String[]> FAULTS = Map.ofEntries(
            Map.entry(7, new String[] {"0", ""}),
            Map.entry(48, new String[] {"1", "two"}),
            Map.entry(91, new String[] {"1", "0"}),
            Map.entry(133, new String[] {"2", "wide"}),
            Map.entry(177, new String[] {"2", "3'-14\""}),
            Map.entry(219, new String[] {"2", "36 1/3\""}),
            Map.entry(261, new String[] {"3", ""}),
            Map.entry(303, new String[] {"7", "ground"}),
            Map.entry(345, new String[] {"7", "0"}),
            Map.entry(387, new String[] {"8", "Courtyard"}),
            Map.entry(429, new String[] {"9", "bronze"}),
            Map.entry(471, new String[] {"10", "C"}),
            Map.entry(514, new String[] {"4", "=10+1/2"}),
            Map.entry(555, new String[] {"2", "1,200 mm"}));

    private WindowScheduleFiles() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        convert(sheet("Windows", schedule()), "src/test/resources/windowschedule/six-hundred.xlsx");
        convert(sheet("Window schedule", template()), "src/main/resources/window-schedule/window-schedule.xlsx");
    }

    private static List<String> template() {
        List<String> rows = new ArrayList<>();
        for (String line : lines("src/main/resources/window-schedule/window-schedule.csv")) {
            StringBuilder row = new StringBuilder();
            for (String one : line.split(",", -1)) row.append(cell(one));
            rows.add(row.toString());
        }
        return rows;
    }

    private static List<String> lines(String file) {
        try {
            return Files.readAllLines(Path.of(file));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> schedule() {
        List<String> rows = new ArrayList<>();
        rows.add(merged("WINDOW SCHEDULE - HARBOUR BLOCK, PHASE 2", 15, 1));
        rows.add(cell(""));
        rows.add(merged("MARK", 1, 2)
                + merged("QTY", 1, 2)
                + merged("UNIT SIZE", 2, 1)
                + merged("ROUGH OPENING (in)", 2, 1)
                + merged("SILL HT. (mm)", 1, 2)
                + merged("FLOOR", 1, 2)
                + merged("ELEVATION", 1, 2)
                + merged("MATERIAL", 1, 2)
                + merged("METHOD", 1, 2)
                + merged("DETAILS", 3, 1)
                + merged("REMARKS", 1, 2));
        rows.add(COVERED
                + COVERED
                + cell("W")
                + cell("H")
                + cell("W")
                + cell("H")
                + COVERED
                + COVERED
                + COVERED
                + COVERED
                + COVERED
                + cell("HEAD")
                + cell("JAMB")
                + cell("SILL")
                + COVERED);
        for (int i = 1; i <= 600; i++) {
            rows.add(row(i));
            if (i % 200 == 0) rows.add(cell(""));
        }
        return rows;
    }

    /** Frames in feet and inches as text; every other row has its rough opening too, in inches that a formula works out. */
    private static String row(int i) {
        String[] cells = {
            "W-%03d".formatted(i),
            i % 50 == 0 ? "3" : i % 2 == 0 ? "1" : "",
            "%d'-%d%s\"".formatted(2 + i % 4, i % 12, FRACTIONS[i % 8]),
            "%d'-%d%s\"".formatted(3 + i % 3, i % 11, FRACTIONS[(i + 3) % 8]),
            i % 2 == 0 ? "=%d+%d/16".formatted(24 + 12 * (i % 4) + i % 12 + 1, 1 + i % 15) : "",
            i % 2 == 0 ? "=%d+%d/16".formatted(36 + 12 * (i % 3) + i % 11 + 1, 1 + i % 15) : "",
            String.valueOf(600 + i % 5 * 50),
            i % 3 == 0 ? "Level " + (1 + i % 6) : String.valueOf(1 + i % 6),
            WALLS[i % 4] + (i % 5 == 0 ? " elevation" : ""),
            MATERIALS[i % 4],
            METHODS[i % 4],
            "%d/A5.1".formatted(1 + i % 9),
            "%d/A5.2".formatted(1 + i % 9),
            "%d/A5.3".formatted(1 + i % 9),
            i % 7 == 0 ? "tempered" : ""
        };
        String[] fault = FAULTS.get(i);
        if (fault != null) cells[Integer.parseInt(fault[0])] = fault[1];
        StringBuilder row = new StringBuilder();
        for (String one : cells) row.append(cell(one));
        return row.toString();
    }

    private static final String COVERED = "<table:covered-table-cell/>";

    private static String merged(String text, int columns, int rows) {
        return "<table:table-cell table:number-columns-spanned=\"%d\" table:number-rows-spanned=\"%d\" office:value-type=\"string\"><text:p>%s</text:p></table:table-cell>%s"
                .formatted(columns, rows, escaped(text), COVERED.repeat(columns - 1));
    }

    private static String cell(String text) {
        if (text.isEmpty()) return "<table:table-cell/>";
        if (text.startsWith("="))
            return "<table:table-cell table:formula=\"of:%s\" office:value-type=\"float\"/>".formatted(text);
        if (text.matches("\\d+(\\.\\d+)?"))
            return "<table:table-cell office:value-type=\"float\" office:value=\"%s\"/>".formatted(text);
        return "<table:table-cell office:value-type=\"string\"><text:p>%s</text:p></table:table-cell>"
                .formatted(escaped(text));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private static String sheet(String name, List<String> rows) {
        StringBuilder text = new StringBuilder("""
                <?xml version="1.0" encoding="UTF-8"?>
                <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
                  xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
                  xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
                  office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
                <office:body><office:spreadsheet><table:table table:name="%s">
                """.formatted(name));
        for (String row : rows) text.append("<table:table-row>").append(row).append("</table:table-row>\n");
        return text.append("</table:table></office:spreadsheet></office:body></office:document>\n")
                .toString();
    }

    private static void convert(String sheet, String target) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("window-schedule");
        String name = Path.of(target).getFileName().toString();
        Path flat = folder.resolve(name.replace(".xlsx", ".fods"));
        Files.writeString(flat, sheet);
        int code = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        folder.toString(),
                        flat.toString())
                .inheritIO()
                .start()
                .waitFor();
        if (code != 0) throw new IOException("soffice ended with " + code);
        Files.move(folder.resolve(name), Path.of(target), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    }
}
